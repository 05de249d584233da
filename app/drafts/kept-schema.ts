import type * as z from 'zod/mini';

/**
 * Of a form that is kept on the device.
 * @template T what the schema lets through, without the `undefined` that zod adds to fields which may be absent
 */
export type KeptSchema<T> = z.ZodMiniType & { readonly __draft?: T };
