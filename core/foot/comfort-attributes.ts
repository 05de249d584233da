/**
 * On which attributes comfort is answered, and the words at both ends of each line.
 *
 * Every attribute is a 0-100 line whose high end is the good one, so that scores point the same way. Those that have
 * too much as well as too little are asked on a line with the good point in the middle since (`two-sided.ts`); answers
 * that were given on the 0-100 line before stay what they are.
 * `overall` carries the anchors of Mündermann et al., Gait & Posture 2002;16:38-45. The items of
 * that study, of Mills et al., Med Sci Sports Exerc 2010;42:1966-71, and of the RUN-CAT (Bishop et
 * al., J Sports Sci 2020;38:2100-07) stand beside their studies (Mündermann items and anchors from
 * memory); the rest, and all other words at the ends, is common practice, no source.
 */
export const comfortAttributeIds = [
  'overall', // Mündermann, Mills
  'heel-cushioning', // Mündermann, Mills, Bishop
  'forefoot-cushioning', // Mündermann, Mills, Bishop
  'flexibility', // Bishop
  'stability', // Mündermann, Mills, Bishop
  'arch', // Mündermann, Mills
  'fit-length', // Mündermann
  'toe-room', // Mündermann
  'heel-hold', // Mündermann
  'midfoot-hold',
  'ventilation',
  'inside-feel',
  'weight-feel',
] as const;
export type ComfortAttributeId = (typeof comfortAttributeIds)[number];
