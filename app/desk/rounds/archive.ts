/** A shoe is put away or brought back, each with the way back in the message. */
import type { RecordOf } from '../../../core/records/index.ts';
import { archived } from '../../drafts/project.ts';
import { toInstant } from '../../parts/instant.ts';
import { showToast } from '../../parts/controls/toast.tsx';
import { store } from '../../parts/state.ts';
import { d, p, t } from '../../words/index.ts';

type ProjectRecord = RecordOf<'project'>;

const save = async (project: ProjectRecord, at: string | null): Promise<ProjectRecord | null> => {
  const saved = await store.save('project', archived(project.body, at), project.revision.id);
  return saved.ok ? saved.value : null;
};

/** @param nowMs milliseconds since 1970 */
export const putAway = async (project: ProjectRecord, nowMs: number): Promise<void> => {
  const saved = await save(project, toInstant(nowMs));
  showToast(
    saved
      ? {
          text: p().brief.isPutAway,
          action: { label: t().undo, run: () => void save(saved, null) },
        }
      : { text: d().trouble },
  );
};

export const bringBack = async (project: ProjectRecord): Promise<void> => {
  const before = project.body.archived ?? null;
  const saved = await save(project, null);
  showToast(
    saved
      ? { text: p().brief.isBack, action: { label: t().undo, run: () => void save(saved, before) } }
      : { text: d().trouble },
  );
};
