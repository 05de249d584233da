/** The worker of the desk: reads the device's log by itself, so that the screen never waits for it. */
import { expose } from 'comlink';
import { openStore } from '../../store/index.ts';
import { deskWork } from './desk-work.ts';

const store = openStore();
expose(deskWork(() => store.heads(), Date.now));
