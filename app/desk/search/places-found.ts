/** Which places does somebody mean by what they typed? Pure. */

export interface NamedPlace {
  readonly name: string;
  readonly href: string;
}

/** Those whose name, or a word of it, begins with it; then those that hold it. */
export const placesFound = (
  places: readonly NamedPlace[],
  typed: string,
  most: number,
): readonly NamedPlace[] => {
  const sought = typed.trim().toLowerCase();
  if (sought === '') return [];
  const rank = ({ name }: NamedPlace): number => {
    const text = name.toLowerCase();
    if (text.startsWith(sought)) return 0;
    if (text.includes(` ${sought}`)) return 1;
    return sought.length > 1 && text.includes(sought) ? 2 : 3;
  };
  return places
    .map((place) => ({ place, rank: rank(place) }))
    .filter((one) => one.rank < 3)
    .sort((a, b) => a.rank - b.rank)
    .slice(0, most)
    .map(({ place }) => place);
};
