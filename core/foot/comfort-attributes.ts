/**
 * On which attributes comfort is answered, and the words at both ends of each line.
 *
 * Every attribute is a 0-100 line whose high end is the good one, so that scores point the same way.
 * `overall` carries the anchors of Mündermann et al., Gait & Posture 2002;16:38-45. The items of
 * that study, of Mills et al., Med Sci Sports Exerc 2010;42:1966-71, and of the RUN-CAT (Bishop et
 * al., J Sports Sci 2020;38:2100-07) are named with their source (Mündermann items and anchors from
 * memory); the rest, and all other words at the ends, is common practice, no source.
 */
import type { Words } from './zones.ts';

export const comfortAttributeIds = [
  'overall',
  'heel-cushioning',
  'forefoot-cushioning',
  'flexibility',
  'stability',
  'arch',
  'fit-length',
  'toe-room',
  'heel-hold',
  'midfoot-hold',
  'ventilation',
  'inside-feel',
  'weight-feel',
] as const;
export type ComfortAttributeId = (typeof comfortAttributeIds)[number];

export type ComfortSource =
  'mundermann-2002' | 'mills-2010' | 'bishop-2020' | 'common-practice-no-source';

export type ComfortAttribute = {
  readonly id: ComfortAttributeId;
  readonly name: Words;
  /** The words at 0. */
  readonly low: Words;
  /** The words at 100. */
  readonly high: Words;
  /** The studies that ask for this attribute. */
  readonly sources: readonly ComfortSource[];
};

/** Every attribute by its id, in the order of `comfortAttributeIds`. */
export const comfortAttributes: Readonly<Record<ComfortAttributeId, ComfortAttribute>> = {
  overall: {
    id: 'overall',
    name: { en: 'Overall comfort', zh: '整体舒适度' },
    low: { en: 'not comfortable at all', zh: '完全不舒适' },
    high: { en: 'most comfortable imaginable', zh: '能想象的最舒适' },
    sources: ['mundermann-2002', 'mills-2010'],
  },
  'heel-cushioning': {
    id: 'heel-cushioning',
    name: { en: 'Heel cushioning', zh: '后跟缓震' },
    low: { en: 'far too hard or too soft', zh: '过硬或过软' },
    high: { en: 'just right', zh: '恰到好处' },
    sources: ['mundermann-2002', 'mills-2010', 'bishop-2020'],
  },
  'forefoot-cushioning': {
    id: 'forefoot-cushioning',
    name: { en: 'Forefoot cushioning', zh: '前掌缓震' },
    low: { en: 'far too hard or too soft', zh: '过硬或过软' },
    high: { en: 'just right', zh: '恰到好处' },
    sources: ['mundermann-2002', 'mills-2010', 'bishop-2020'],
  },
  flexibility: {
    id: 'flexibility',
    name: { en: 'Flexibility of the forefoot', zh: '前掌弯折性' },
    low: { en: 'fights my stride', zh: '妨碍步伐' },
    high: { en: 'bends just as I do', zh: '弯折自如' },
    sources: ['bishop-2020'],
  },
  stability: {
    id: 'stability',
    name: { en: 'Stability', zh: '稳定性' },
    low: { en: 'rolls under me', zh: '脚下摇晃' },
    high: { en: 'perfectly steady', zh: '非常稳定' },
    sources: ['mundermann-2002', 'mills-2010', 'bishop-2020'],
  },
  arch: {
    id: 'arch',
    name: { en: 'Arch', zh: '足弓贴合' },
    low: { en: 'presses or is missing', zh: '顶脚或悬空' },
    high: { en: 'fits my arch', zh: '贴合足弓' },
    sources: ['mundermann-2002', 'mills-2010'],
  },
  'fit-length': {
    id: 'fit-length',
    name: { en: 'Fit in length', zh: '长度合脚' },
    low: { en: 'far too short or too long', zh: '过短或过长' },
    high: { en: 'just right', zh: '恰到好处' },
    sources: ['mundermann-2002'],
  },
  'toe-room': {
    id: 'toe-room',
    name: { en: 'Toe room', zh: '鞋头空间' },
    low: { en: 'toes cramped or swimming', zh: '挤脚趾或过空' },
    high: { en: 'just right', zh: '恰到好处' },
    sources: ['mundermann-2002'],
  },
  'heel-hold': {
    id: 'heel-hold',
    name: { en: 'Heel hold', zh: '后跟包裹' },
    low: { en: 'slips or bites', zh: '掉跟或磨跟' },
    high: { en: 'holds without a thought', zh: '贴合稳固' },
    sources: ['mundermann-2002'],
  },
  'midfoot-hold': {
    id: 'midfoot-hold',
    name: { en: 'Midfoot hold', zh: '中足包裹' },
    low: { en: 'foot slides or is squeezed', zh: '脚滑动或被勒紧' },
    high: { en: 'locked down in comfort', zh: '锁定且舒适' },
    sources: ['common-practice-no-source'],
  },
  ventilation: {
    id: 'ventilation',
    name: { en: 'Ventilation', zh: '透气性' },
    low: { en: 'hot and sweaty', zh: '闷热' },
    high: { en: 'cool and dry', zh: '清爽' },
    sources: ['common-practice-no-source'],
  },
  'inside-feel': {
    id: 'inside-feel',
    name: { en: 'Inside feel', zh: '内里触感' },
    low: { en: 'rough, seams felt', zh: '粗糙、有车线感' },
    high: { en: 'smooth all round', zh: '处处平滑' },
    sources: ['common-practice-no-source'],
  },
  'weight-feel': {
    id: 'weight-feel',
    name: { en: 'Weight in use', zh: '脚感重量' },
    low: { en: 'heavy on the foot', zh: '沉重' },
    high: { en: 'forgotten on the foot', zh: '轻若无物' },
    sources: ['common-practice-no-source'],
  },
};
