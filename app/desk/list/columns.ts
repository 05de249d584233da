/** Which columns of a list are shown? A reader hides those they do not need; the name of a row stays. Pure. */
import * as z from 'zod/mini';

/** More lists, or more columns of one, are not read: nothing here has as many. */
const MOST = 100;

/** By list, the names of its hidden columns, as kept on the device. */
const hiddenSchema = z.record(
  z.string().check(z.maxLength(MOST)),
  z.array(z.string().check(z.maxLength(MOST))).check(z.maxLength(MOST)),
);
export type HiddenColumns = Readonly<Record<string, readonly string[]>>;

/** @param kept as the device has it; what cannot be read hides nothing */
export const readHidden = (kept: unknown): HiddenColumns => {
  const read = z.safeParse(hiddenSchema, kept);
  return read.success ? read.data : {};
};

/** The choice with one column of a list shown or hidden. */
export const withShown = (
  hidden: HiddenColumns,
  list: string,
  column: string,
  isShown: boolean,
): HiddenColumns => {
  const others = (hidden[list] ?? []).filter((one) => one !== column);
  return { ...hidden, [list]: isShown ? others : [...others, column] };
};

/** The columns that are drawn; one that cannot be hidden is drawn whatever the device kept. */
export const shownOf = <C extends { readonly column: string; readonly stays?: boolean }>(
  columns: readonly C[],
  hidden: readonly string[] | undefined,
): readonly C[] => columns.filter(({ column, stays }) => stays || !hidden?.includes(column));
