/** Writes the two demo files: `npm run demo`. */
import { writeFile } from 'node:fs/promises';
import { buildDemo } from './wear-test.ts';

const here = new URL('.', import.meta.url);
const { wearTest, lateDelivery } = buildDemo();
await writeFile(new URL('wear-test.pairlog', here), wearTest);
await writeFile(new URL('late-delivery.pairlog', here), lateDelivery);
console.log(
  `wear-test.pairlog ${wearTest.length} bytes, late-delivery.pairlog ${lateDelivery.length} bytes`,
);
