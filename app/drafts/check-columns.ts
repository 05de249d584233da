/** The columns of a table of bench checks, by the names that its heading gives them. */

export const neededColumns = [
  'pair',
  'measured_at',
  'measure',
  'site',
  'foot',
  'value',
  'unit',
] as const;
export const otherColumns = [
  'distance_km',
  'rested_h',
  'temperature_c',
  'operator',
  'gauge',
  'uncertainty',
  'load_n',
  'method',
] as const;
export const columns = [...neededColumns, ...otherColumns] as const;
export type Column = (typeof columns)[number];
