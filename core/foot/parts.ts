/** Which parts of a shoe can cause a complaint or carry a change, and whose trade each is. */
import type { Words } from './zones.ts';

export const partIds = [
  'last',
  'upper-pattern',
  'upper-material',
  'midsole-geometry',
  'midsole-foam',
  'outsole',
  'sockliner',
  'lacing',
  'tooling',
] as const;
export type PartId = (typeof partIds)[number];

export type Part = {
  readonly id: PartId;
  readonly name: Words;
  /** Who can act on it. */
  readonly role: Words;
};

/** Every part by its id, in the order of `partIds`. Roles: common practice, no source. */
export const parts: Readonly<Record<PartId, Part>> = {
  last: {
    id: 'last',
    name: { en: 'last', zh: '鞋楦' },
    role: { en: 'last maker', zh: '鞋楦师' },
  },
  'upper-pattern': {
    id: 'upper-pattern',
    name: { en: 'upper pattern', zh: '帮面版型' },
    role: { en: 'pattern engineer', zh: '版师' },
  },
  'upper-material': {
    id: 'upper-material',
    name: { en: 'upper material', zh: '帮面材料' },
    role: { en: 'material developer', zh: '材料开发' },
  },
  'midsole-geometry': {
    id: 'midsole-geometry',
    name: { en: 'midsole geometry', zh: '中底造型' },
    role: { en: 'sole-unit designer', zh: '鞋底设计' },
  },
  'midsole-foam': {
    id: 'midsole-foam',
    name: { en: 'midsole foam', zh: '中底发泡材料' },
    role: { en: 'foam compounder', zh: '发泡配方工程师' },
  },
  outsole: {
    id: 'outsole',
    name: { en: 'outsole', zh: '大底' },
    role: { en: 'outsole and rubber developer', zh: '大底橡胶开发' },
  },
  sockliner: {
    id: 'sockliner',
    name: { en: 'sockliner', zh: '鞋垫' },
    role: { en: 'sockliner developer', zh: '鞋垫开发' },
  },
  lacing: {
    id: 'lacing',
    name: { en: 'lacing', zh: '鞋带系统' },
    role: { en: 'pattern and trims engineer', zh: '版师与辅料开发' },
  },
  tooling: {
    id: 'tooling',
    name: { en: 'tooling', zh: '模具' },
    role: { en: 'mould engineer', zh: '模具工程师' },
  },
};
