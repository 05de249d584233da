/** A body with other numbers at some of its fields, everything else as it was. */
import type { Body } from '../../../core/records/index.ts';

type Node = Record<string, unknown>;

/** @param numbers by field, as a body's problems name it, such as `brief.feet.lengthMm.1` */
export const withNumbers = (body: Body, numbers: ReadonlyMap<string, number>): Body => {
  const changed = structuredClone(body) as Node;
  for (const [field, value] of numbers) {
    const keys = field.split('.');
    const last = keys.pop() as string;
    let node: Node | undefined = changed;
    for (const key of keys) node = node?.[key] as Node | undefined;
    if (node && Object.hasOwn(node, last)) node[last] = value;
  }
  return changed;
};
