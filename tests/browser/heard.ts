/** What a screen reader has of a place: its outline, its pictures and its tables, by the browser's own tree. */
import type { Page } from '@playwright/test';

interface Node {
  readonly nodeId: string;
  readonly parentId?: string;
  readonly ignored: boolean;
  readonly role?: { readonly value: string };
  readonly name?: { readonly value: string };
  readonly properties?: readonly { readonly name: string; readonly value: { value?: unknown } }[];
}

const PICTURES = ['image', 'img', 'graphics-document', 'SvgRoot', 'graphics-symbol'];
/** What says the same in words. */
const WORDS = ['table', 'list', 'grid', 'treegrid', 'DescriptionList'];
/** What a picture and its words stand in together; in a cell or a line of a list the rest of it are the words. */
const PARTS = ['figure', 'region', 'article'];
const LINES = ['cell', 'gridcell', 'rowheader', 'listitem'];

/** @returns a line for each fault; none where a reader has all that the eye has */
export const heardFaults = async (page: Page): Promise<readonly string[]> => {
  const session = await page.context().newCDPSession(page);
  const { nodes } = (await session.send('Accessibility.getFullAXTree')) as unknown as {
    nodes: readonly Node[];
  };
  await session.detach();
  const byId = new Map(nodes.map((node) => [node.nodeId, node]));
  const heard = nodes.filter(({ ignored }) => !ignored);
  const roleOf = (node: Node) => node.role?.value ?? '';
  const nameOf = (node: Node) => node.name?.value.trim() ?? '';
  const levelOf = (node: Node) =>
    node.properties?.find(({ name }) => name === 'level')?.value.value;
  const above = (node: Node): readonly Node[] => {
    const parent = node.parentId === undefined ? undefined : byId.get(node.parentId);
    return parent ? [parent, ...above(parent)] : [];
  };
  const faults: string[] = [];

  const first = heard.filter((node) => roleOf(node) === 'heading' && levelOf(node) === 1);
  if (first.length !== 1) faults.push(`${first.length} headings of the first level`);
  for (const landmark of ['banner', 'main'])
    if (heard.filter((node) => roleOf(node) === landmark).length !== 1)
      faults.push(`not one landmark ${landmark}`);

  const isPicture = (node: Node) => PICTURES.includes(roleOf(node));
  const worded = new Set(heard.filter((node) => WORDS.includes(roleOf(node))).flatMap(above));
  for (const picture of heard.filter(isPicture)) {
    if (nameOf(picture) === '') faults.push('a picture without a name');
    // A mark within a picture is part of it.
    if (above(picture).some(isPicture)) continue;
    const isInWords = above(picture).some(
      (node) =>
        LINES.includes(roleOf(node)) ||
        (PARTS.includes(roleOf(node)) && worded.has(node)) ||
        // A chart whose marks are walked by arrow keys is a list of what they say.
        (roleOf(node) === 'group' && nameOf(node) !== ''),
    );
    if (!isInWords) faults.push(`a picture without its list or table: ${nameOf(picture)}`);
  }
  const named = new Set(heard.filter((node) => nameOf(node) !== '').flatMap(above));
  for (const figure of heard.filter((node) => roleOf(node) === 'figure'))
    if (nameOf(figure) === '' && !named.has(figure)) faults.push('a figure that says nothing');

  const tables = heard.filter((node) => roleOf(node) === 'table' || roleOf(node) === 'grid');
  for (const table of tables) {
    const inside = heard.filter((node) => above(node).includes(table)).map(roleOf);
    if (!inside.includes('columnheader')) faults.push(`a table without heads: ${nameOf(table)}`);
  }
  return faults;
};
