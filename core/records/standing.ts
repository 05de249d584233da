/** Does a stop-use notice stand at this instant? */
import type { StopUse } from './bodies/making.ts';

/** True from its beginning until it was lifted. @param nowMs milliseconds since 1970 */
export const isStanding = ({ from, until }: StopUse, nowMs: number): boolean =>
  Date.parse(from) <= nowMs && (until === undefined || nowMs < Date.parse(until));
