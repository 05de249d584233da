/** Of which kind is the foam under the foot? Kinds of foam wear differently. */
export const foamIds = ['eva', 'pu', 'peba', 'tpu', 'other'] as const;
export type FoamId = (typeof foamIds)[number];
