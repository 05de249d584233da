/**
 * How does a log travel as a text? One JSON object a line: a header, the revisions, and a closing
 * line with their count and the digest of every line before it, so that a cut file is known.
 */
import * as z from 'zod/mini';
import { canonicalJson, sha256OfText } from './hash.ts';
import type { RecordId } from './id.ts';
import { recordIdSchema, sha256Schema, type Revision } from './revision.ts';
import { parseRevision, type RevisionProblem } from './seal.ts';
import { instantField } from './bodies/common.ts';
import { wholeIn } from './bodies/number-in.ts';
import * as ranges from './bodies/field-ranges.ts';

export const BUNDLE_FORMAT = 'pairlog-bundle';
export const BUNDLE_VERSION = 1;

export const bundleHeaderSchema = z.looseObject({
  format: z.literal(BUNDLE_FORMAT),
  v: z.literal(BUNDLE_VERSION),
  madeAt: instantField,
  /** The group whose log it is, where there is a hub. */
  group: z.optional(recordIdSchema),
  groupName: z.optional(z.string()),
  /** Who made the file. */
  by: z.optional(recordIdSchema),
  /** The tester whose phone it sets up: a hand-out file. */
  for: z.optional(recordIdSchema),
  /** The specialist whose device it sets up. */
  forSpecialist: z.optional(recordIdSchema),
});

export const bundleEndSchema = z.looseObject({
  end: z.literal(true),
  count: wholeIn(ranges.count),
  digest: sha256Schema,
});

export type BundleHeader = Readonly<z.infer<typeof bundleHeaderSchema>>;

export interface BundleOrigin {
  readonly madeAt: string;
  readonly group?: RecordId;
  readonly groupName?: string;
  readonly by?: RecordId;
  readonly for?: RecordId;
  readonly forSpecialist?: RecordId;
}

/** The bundle of these revisions as text (NDJSON, UTF-8, a newline after each line). */
export const writeBundle = (origin: BundleOrigin, revisions: Iterable<Revision>): string => {
  const lines = [canonicalJson({ format: BUNDLE_FORMAT, v: BUNDLE_VERSION, ...origin })];
  for (const revision of revisions) lines.push(canonicalJson(revision));
  const text = lines.join('\n') + '\n';
  const end = { end: true, count: lines.length - 1, digest: sha256OfText(text) };
  return text + canonicalJson(end) + '\n';
};

export type BundleProblem =
  | { readonly why: 'not-a-bundle'; readonly line: 1 }
  | { readonly why: 'newer-bundle'; readonly line: 1; readonly v: number }
  | { readonly why: 'not-json'; readonly line: number }
  | ({ readonly line: number } & RevisionProblem)
  /** The closing line is missing: the end of the file was lost on the way. */
  | { readonly why: 'cut-off'; readonly line: number }
  /** The closing line does not fit what stands before it: something in the file was changed. */
  | { readonly why: 'digest-differs'; readonly line: number };

export interface ReadBundle {
  /** Null where the file is no bundle at all. */
  readonly header: BundleHeader | null;
  /** The revisions that are whole, with the line each stood on. */
  readonly revisions: readonly { readonly line: number; readonly revision: Revision }[];
  /** Everything that is wrong with the file, by line. */
  readonly problems: readonly BundleProblem[];
}

const parseJson = (text: string): { readonly value: unknown } | null => {
  try {
    return { value: JSON.parse(text) as unknown };
  } catch {
    return null;
  }
};

/**
 * Reads a bundle. Each revision carries its own hash, so the whole ones of a damaged file can be
 * taken; `problems` says by line what could not.
 */
export const readBundle = (text: string): ReadBundle => {
  const problems: BundleProblem[] = [];
  const revisions: { line: number; revision: Revision }[] = [];
  const lines = text.replace(/^\uFEFF/, '').split('\n');
  if (lines.at(-1) === '') lines.pop();
  const first = parseJson(lines[0] ?? '')?.value as { format?: unknown; v?: unknown } | null;
  const header = z.safeParse(bundleHeaderSchema, first);
  if (!header.success) {
    const newer = first?.format === BUNDLE_FORMAT && Number(first.v) > BUNDLE_VERSION;
    const why = newer
      ? { why: 'newer-bundle' as const, line: 1 as const, v: Number(first.v) }
      : { why: 'not-a-bundle' as const, line: 1 as const };
    return { header: null, revisions, problems: [why] };
  }
  let ended = false;
  for (let at = 1; at < lines.length; at++) {
    const line = at + 1;
    const json = parseJson(lines[at] as string);
    if (!json) {
      problems.push({ why: at === lines.length - 1 ? 'cut-off' : 'not-json', line });
      if (at === lines.length - 1) ended = true;
      continue;
    }
    const end = z.safeParse(bundleEndSchema, json.value);
    if (end.success) {
      ended = true;
      const before = lines.slice(0, at).join('\n') + '\n';
      const whole = end.data.count === at - 1 && end.data.digest === sha256OfText(before);
      if (!whole || at !== lines.length - 1) problems.push({ why: 'digest-differs', line });
      break;
    }
    const parsed = parseRevision(json.value);
    if (parsed.ok) revisions.push({ line, revision: parsed.revision });
    else problems.push({ line, ...parsed.problem });
  }
  if (!ended) problems.push({ why: 'cut-off', line: lines.length });
  return { header: header.data, revisions, problems };
};
