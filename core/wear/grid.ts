/**
 * How are the unknown spreads and the unknown bend integrated out, the same to the last bit every time?
 * On a product of Gauss-Legendre rules laid around the mode, each axis as far out as the density counts.
 *
 * Source: integrating a few hyperparameters on a grid around their mode, Rue H, Martino S & Chopin N, J R
 * Stat Soc B 2009;71:319-392, section 3.1; nodes of the rule, Abramowitz & Stegun 25.4.29-30.
 */

/** One axis of integration, from `least` to `most`, searched from `start`; fixed where these are equal. */
export interface Axis {
  readonly least: number;
  readonly most: number;
  readonly start: number;
  /** Number of nodes. */
  readonly nodes: number;
}

/** A place on all axes, with the logarithm of the weight of its rule. */
export interface GridNode {
  readonly place: readonly number[];
  readonly logWeight: number;
}

/** Beyond this fall of the logarithm of the density, along one axis, it is left out. */
const FALL = 5.5;
const SWEEPS = 3;
const GOLDEN = (Math.sqrt(5) - 1) / 2;

/** Nodes on (-1, 1) and weights of the Gauss-Legendre rule of n points. */
const gaussLegendre = (n: number): readonly { readonly node: number; readonly weight: number }[] =>
  Array.from({ length: n }, (_, at) => {
    let node = Math.cos((Math.PI * (at + 0.75)) / (n + 0.5));
    let slope = 1;
    for (let step = 0; step < 20; step++) {
      let [before, here] = [1, node];
      for (let k = 2; k <= n; k++)
        [before, here] = [here, ((2 * k - 1) * node * here - (k - 1) * before) / k];
      slope = (n * (node * here - before)) / (node * node - 1);
      node -= here / slope;
    }
    return { node, weight: 2 / ((1 - node * node) * slope * slope) };
  });

const rules = new Map<number, ReturnType<typeof gaussLegendre>>();
const ruleOf = (n: number) => {
  const rule = rules.get(n) ?? gaussLegendre(n);
  rules.set(n, rule);
  return rule;
};

/** The greatest of a function of one hill between two ends, by golden section. */
const summit = (density: (at: number) => number, least: number, most: number): number => {
  let [low, high] = [least, most];
  let [left, right] = [high - GOLDEN * (high - low), low + GOLDEN * (high - low)];
  let [atLeft, atRight] = [density(left), density(right)];
  while (high - low > 0.01 * (most - least))
    if (atLeft >= atRight) {
      [high, right, atRight] = [right, left, atLeft];
      left = high - GOLDEN * (high - low);
      atLeft = density(left);
    } else {
      [low, left, atLeft] = [left, right, atRight];
      right = low + GOLDEN * (high - low);
      atRight = density(right);
    }
  return (low + high) / 2;
};

/** The farthest place from the top towards the end where the density still counts. */
const edge = (density: (at: number) => number, top: number, end: number): number => {
  const floor = density(top) - FALL;
  if (density(end) >= floor) return end;
  let [inside, outside] = [top, end];
  while (Math.abs(outside - inside) > 0.02 * Math.abs(inside - top) + 1e-9 * Math.abs(end - top)) {
    const half = (inside + outside) / 2;
    if (density(half) >= floor) inside = half;
    else outside = half;
  }
  return outside;
};

/**
 * The nodes on which to sum a density over all axes.
 * @param logDensity its logarithm, up to a constant, at a place
 */
export const gridAround = (
  axes: readonly Axis[],
  logDensity: (place: readonly number[]) => number,
): readonly GridNode[] => {
  const mode = axes.map(({ start }) => start);
  const along = (axis: number) => (at: number) => {
    const place = [...mode];
    place[axis] = at;
    return logDensity(place);
  };
  for (let sweep = 0; sweep < SWEEPS; sweep++)
    for (const [axis, { least, most }] of axes.entries())
      mode[axis] = summit(along(axis), least, most);
  let nodes: readonly GridNode[] = [{ place: [], logWeight: 0 }];
  for (const [axis, { least, most, nodes: count }] of axes.entries()) {
    if (least === most) {
      nodes = nodes.map(({ place, logWeight }) => ({ place: [...place, least], logWeight }));
      continue;
    }
    const density = along(axis);
    const top = mode[axis] as number;
    const [low, high] = [edge(density, top, least), edge(density, top, most)];
    const half = (high - low) / 2;
    nodes = nodes.flatMap(({ place, logWeight }) =>
      ruleOf(count).map(({ node, weight }) => ({
        place: [...place, low + half * (1 + node)],
        logWeight: logWeight + Math.log(half * weight),
      })),
    );
  }
  return nodes;
};
