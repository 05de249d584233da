/** What the reader's language calls measures, units, sites, feet and columns of the table of dimensions. */
import type { DimensionNames } from '../../drafts/dimension-rows.ts';
import { d, t, terms } from '../../words/index.ts';

export const namesHere = (): DimensionNames => ({
  measures: terms().measures,
  units: terms().units,
  sites: d().blueprint.sites,
  feet: { both: d().blueprint.both, left: t().left, right: t().right },
  columns: d().blueprint.table.columns,
});
