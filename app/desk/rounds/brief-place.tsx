import { d } from '../../words/index.ts';
import type { PlaceProps } from '../desk-state.ts';
import { PlaceHead } from '../frame/place.tsx';
import { ProjectForm } from '../project-form.tsx';

export const BriefPlace = ({ records, review }: PlaceProps) => {
  const project = records.project.find(({ revision }) => revision.id === review.project.id);
  return (
    <>
      <PlaceHead headline={review.project.name} sub={d().brief.edit} />
      {project && <ProjectForm project={project} />}
    </>
  );
};
