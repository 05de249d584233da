/** One short message at the foot of the screen, read out, with a way to undo where there is one. */
import { signal } from '@preact/signals';

export interface ToastMessage {
  readonly text: string;
  readonly action?: { readonly label: string; readonly run: () => void };
  /** Stays until it is answered. */
  readonly stays?: boolean;
}

const current = signal<ToastMessage | null>(null);
let timer: ReturnType<typeof setTimeout> | undefined;
/** Long enough to read; longer where there is something to undo. */
const SHOWN_MS = 3500;
const SHOWN_WITH_ACTION_MS = 10_000;

export const showToast = (message: ToastMessage): void => {
  clearTimeout(timer);
  current.value = message;
  const ms = message.action ? SHOWN_WITH_ACTION_MS : SHOWN_MS;
  if (!message.stays) timer = setTimeout(() => (current.value = null), ms);
};

export const Toast = () => {
  const message = current.value;
  return (
    <div role="status" aria-live="polite">
      {message && (
        <div class="toast">
          <span>{message.text}</span>
          {message.action && (
            <button
              type="button"
              class="button"
              onClick={() => {
                current.value = null;
                message.action?.run();
              }}
            >
              {message.action.label}
            </button>
          )}
        </div>
      )}
    </div>
  );
};
