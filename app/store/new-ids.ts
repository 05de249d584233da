/** Names that this device gives. */
import { newRecordId, type DeviceId, type RecordId } from '../../core/records/index.ts';
import type { StoreContext } from './context.ts';

export const newId = ({ now, random }: StoreContext): RecordId => newRecordId(now(), random(16));

export const newDevice = ({ random }: StoreContext): DeviceId =>
  Array.from(random(8), (byte) => byte.toString(16).padStart(2, '0')).join('') as DeviceId;
