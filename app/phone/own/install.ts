/**
 * Can the app be put on the home screen, and is this the moment to say so? Browsers that can do it by themselves offer
 * it with an event at their first page (`beforeinstallprompt`, Web App Manifest incubations); the others have a menu.
 */
import { store } from '../../parts/state.ts';

interface InstallPrompt extends Event {
  prompt(): Promise<void>;
  readonly userChoice: Promise<{ readonly outcome: 'accepted' | 'dismissed' }>;
}

declare global {
  interface Window {
    /** Kept by the first page: it comes before any screen that could use it. */
    pairlogInstall?: InstallPrompt;
  }
}

const DECLINED = 'install-declined';

/** Whether the app runs from the home screen already. */
export const isInstalled = (): boolean =>
  matchMedia('(display-mode: standalone)').matches ||
  (navigator as { standalone?: boolean }).standalone === true;

export const wasDeclined = async (): Promise<boolean> => (await store.setting(DECLINED)) === true;
export const decline = (): Promise<void> => store.saveSetting(DECLINED, true);

/** Whether the browser itself asks the person. */
export const canPrompt = (): boolean => window.pairlogInstall !== undefined;

/** Lets the browser ask. @returns whether the app is on the home screen now */
export const promptInstall = async (): Promise<boolean> => {
  const event = window.pairlogInstall;
  // It can be used once.
  delete window.pairlogInstall;
  if (!event) return false;
  await event.prompt();
  return (await event.userChoice).outcome === 'accepted';
};
