/** What may stand on a line of a bundle, as a JSON Schema for other programs? */
import * as z from 'zod/mini';
import { bodySchemas } from './body.ts';
import { bundleEndSchema, bundleHeaderSchema } from './bundle.ts';
import { kinds, SCHEMA_VERSION } from './kinds.ts';
import { revisionSchema } from './revision.ts';

/**
 * JSON Schema (draft 2020-12) of a bundle's lines: the header, the closing line, the envelope of a
 * revision, and the body of each kind under `$defs`. Generated from the zod schemas.
 */
export const bundleJsonSchema = (): Record<string, unknown> => {
  const schemaOf = (schema: z.ZodMiniType) => {
    const { $schema: _, ...rest } = z.toJSONSchema(schema);
    return rest;
  };
  const versions = Array.from({ length: SCHEMA_VERSION }, (_, at) => at + 1);
  const ref = (name: string) => ({ $ref: `#/$defs/${name}` });
  return {
    $schema: 'https://json-schema.org/draft/2020-12/schema',
    title: 'One line of a Pairlog bundle',
    oneOf: [ref('header'), ref('revision'), ref('end')],
    $defs: {
      header: schemaOf(bundleHeaderSchema),
      revision: {
        ...schemaOf(revisionSchema),
        allOf: kinds.map((kind) => ({
          if: {
            properties: { kind: { const: kind }, sv: { enum: versions }, body: { type: 'object' } },
          },
          then: { properties: { body: ref(kind) } },
        })),
      },
      end: schemaOf(bundleEndSchema),
      ...Object.fromEntries(kinds.map((kind) => [kind, schemaOf(bodySchemas[kind])])),
    },
  };
};
