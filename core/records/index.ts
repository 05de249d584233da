export * from './id.ts';
export * from './new-id.ts';
export * from './hash.ts';
export * from './stamp.ts';
export * from './kinds.ts';
export {
  compareRevisions,
  recordIdSchema,
  revisionSchema,
  type Body,
  type Revision,
} from './revision.ts';
export * from './seal.ts';
export * from './log.ts';
export * from './policy.ts';
export * from './edit.ts';
export * from './body.ts';
export * from './brought-in.ts';
export * from './corrected-by.ts';
export * from './bodies/answering.ts';
export * from './bodies/common.ts';
export * from './bodies/ranges.ts';
export * from './bodies/project.ts';
export * from './bodies/wearing.ts';
export type { Evidence, EvidenceFigures } from './bodies/evidence.ts';
export * from './bodies/making.ts';
export * from './bodies/structured-change.ts';
export * from './bodies/talking.ts';
export * from './bodies/panel.ts';
export * from './bundle.ts';
export * from './bundle-file.ts';
export * from './file-plan.ts';
export * from './file-changes.ts';
export * from './cursor.ts';
export * from './role.ts';
export * from './wire.ts';
export * from './blueprint.ts';
export * from './view.ts';
export * from './json-schema.ts';
export * from './number-fields.ts';
export * from './standing.ts';
export * from './shown-attachments.ts';
export * from './media-type.ts';
export * from './track-fingerprint.ts';
