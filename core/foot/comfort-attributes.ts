/**
 * On which attributes comfort is answered, and the words at both ends of each line.
 *
 * Every attribute is a 0-100 line whose high end is the good one, so that scores point the same way.
 * `overall` carries the anchors of Mündermann et al., Gait & Posture 2002;16:38-45. The items of
 * that study, of Mills et al., Med Sci Sports Exerc 2010;42:1966-71, and of the RUN-CAT (Bishop et
 * al., J Sports Sci 2020;38:2100-07) are named with their source (Mündermann items and anchors from
 * memory); the rest, and all other words at the ends, is common practice, no source.
 */
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
  /** The studies that ask for this attribute. */
  readonly sources: readonly ComfortSource[];
};

/** Every attribute by its id, in the order of `comfortAttributeIds`. */
export const comfortAttributes: Readonly<Record<ComfortAttributeId, ComfortAttribute>> = {
  overall: {
    id: 'overall',
    sources: ['mundermann-2002', 'mills-2010'],
  },
  'heel-cushioning': {
    id: 'heel-cushioning',
    sources: ['mundermann-2002', 'mills-2010', 'bishop-2020'],
  },
  'forefoot-cushioning': {
    id: 'forefoot-cushioning',
    sources: ['mundermann-2002', 'mills-2010', 'bishop-2020'],
  },
  flexibility: {
    id: 'flexibility',
    sources: ['bishop-2020'],
  },
  stability: {
    id: 'stability',
    sources: ['mundermann-2002', 'mills-2010', 'bishop-2020'],
  },
  arch: {
    id: 'arch',
    sources: ['mundermann-2002', 'mills-2010'],
  },
  'fit-length': {
    id: 'fit-length',
    sources: ['mundermann-2002'],
  },
  'toe-room': {
    id: 'toe-room',
    sources: ['mundermann-2002'],
  },
  'heel-hold': {
    id: 'heel-hold',
    sources: ['mundermann-2002'],
  },
  'midfoot-hold': {
    id: 'midfoot-hold',
    sources: ['common-practice-no-source'],
  },
  ventilation: {
    id: 'ventilation',
    sources: ['common-practice-no-source'],
  },
  'inside-feel': {
    id: 'inside-feel',
    sources: ['common-practice-no-source'],
  },
  'weight-feel': {
    id: 'weight-feel',
    sources: ['common-practice-no-source'],
  },
};
