/** Which rows of a list are selected? By id, so that a new order or a narrower list changes nothing of it. Pure. */

export interface Selection<Id> {
  readonly chosen: ReadonlySet<Id>;
  /** The row pressed last, from which the next range is counted; null: none. */
  readonly anchor: Id | null;
}

export const nothingChosen: Selection<never> = { chosen: new Set(), anchor: null };

/** From one to the other, whichever comes first; none where one of them is not listed. */
const rangeOf = <Id>(ids: readonly Id[], from: Id, to: Id): readonly Id[] => {
  const [a, b] = [ids.indexOf(from), ids.indexOf(to)];
  return a < 0 || b < 0 ? [] : ids.slice(Math.min(a, b), Math.max(a, b) + 1);
};

/** One row more or less. */
export const toggled = <Id>({ chosen }: Selection<Id>, id: Id): Selection<Id> => {
  const next = new Set(chosen);
  if (!next.delete(id)) next.add(id);
  return { chosen: next, anchor: id };
};

/**
 * All rows from the one pressed last to this one, in the order of the list, become what that one is: chosen or not.
 * Where it is in the list no more, this row alone is toggled.
 * @param ids of the rows as they are listed
 */
export const upTo = <Id>(selection: Selection<Id>, ids: readonly Id[], id: Id): Selection<Id> => {
  const { chosen, anchor } = selection;
  if (anchor === null) return toggled(selection, id);
  const range = rangeOf(ids, anchor, id);
  if (range.length === 0) return toggled(selection, id);
  const next = new Set(chosen);
  if (chosen.has(anchor)) for (const one of range) next.add(one);
  else for (const one of range) next.delete(one);
  return { chosen: next, anchor };
};

/**
 * The range that begins at the row pressed last now ends at `to` instead of at `from`, as when shift is held while
 * walking through the list; where that row is not chosen or not listed, the range begins at `from`.
 */
export const extended = <Id>(
  { chosen, anchor }: Selection<Id>,
  ids: readonly Id[],
  from: Id,
  to: Id,
): Selection<Id> => {
  const begin = anchor !== null && chosen.has(anchor) && ids.includes(anchor) ? anchor : from;
  const next = new Set(chosen);
  for (const one of rangeOf(ids, begin, from)) next.delete(one);
  for (const one of rangeOf(ids, begin, to)) next.add(one);
  return { chosen: next, anchor: begin };
};

/** All that are listed, or none of them where all were; what is chosen and not listed stays as it is. */
export const allToggled = <Id>(
  { chosen, anchor }: Selection<Id>,
  ids: readonly Id[],
): Selection<Id> => {
  const next = new Set(chosen);
  const isAll = howMany({ chosen, anchor }, ids) === 'all';
  for (const id of ids)
    if (isAll) next.delete(id);
    else next.add(id);
  return { chosen: next, anchor };
};

/** What the box above the list shows. */
export const howMany = <Id>(
  { chosen }: Selection<Id>,
  ids: readonly Id[],
): 'none' | 'some' | 'all' => {
  if (ids.length === 0) return 'none';
  const listed = ids.filter((id) => chosen.has(id)).length;
  return listed === 0 ? 'none' : listed === ids.length ? 'all' : 'some';
};
