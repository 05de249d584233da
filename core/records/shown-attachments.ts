/** Which photos, tracks and report files does a body show, whatever its kind? */
import type { Body } from './revision.ts';
import type { Sha256 } from './id.ts';

const listed = (value: unknown): readonly Sha256[] =>
  Array.isArray(value) ? value.filter((one): one is Sha256 => typeof one === 'string') : [];

/** Their SHA-256, each once: the body's own, those of the complaints of a run, its track, a report's file. */
export const attachmentsOf = (body: Body): readonly Sha256[] => {
  const feet = body['feet'] as { readonly complaints?: unknown } | undefined;
  const track = body['track'] as { readonly attachment?: unknown } | undefined;
  const complaints = Array.isArray(feet?.complaints) ? (feet.complaints as readonly Body[]) : [];
  return [
    ...new Set([
      ...listed(body['photos']),
      ...complaints.flatMap((complaint) => listed(complaint['photos'])),
      ...listed([track?.attachment]),
      // An attachment names itself by the same field; it shows nothing.
      ...listed([body['mediaType'] === undefined ? body['sha256'] : undefined]),
    ]),
  ];
};
