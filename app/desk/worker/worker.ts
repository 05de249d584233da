/** The worker of the desk: reads the device's log by itself, so that the screen never waits for it. */
import { expose, transferHandlers } from 'comlink';
import { openStore } from '../../store/index.ts';
import { deskWork } from './desk-work.ts';
import { inPieces } from './in-pieces.ts';

const store = openStore();
transferHandlers.set('in-pieces', inPieces(true));
expose(deskWork(() => store.heads(), Date.now));
