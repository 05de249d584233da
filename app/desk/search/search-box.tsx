/**
 * The search over everything of a test, from every place of the desk: by its button, by `/` or by Ctrl+K. What is found
 * stands in groups; up and down go through it, Enter opens it.
 */
import { useEffect, useId, useRef, useState } from 'preact/hooks';
import { useLocation } from 'preact-iso';
import type { RecordId } from '../../../core/records/index.ts';
import type { Everything } from '../../../core/search/index.ts';
import { p } from '../../words/index.ts';
import { askWorker, noteTrouble } from '../desk-state.ts';
import { useTyped } from '../list/use-typed.ts';
import { placesFound, type NamedPlace } from './places-found.ts';
import { groupsOf, placesOf, type ResultGroup } from './results.tsx';
import { spanTyped } from './typed-day.ts';
import './search.css';

/** So many of each kind are shown. */
const MOST = 4;

/** Whether a key is meant for a field that it is typed into. */
const isTyping = (target: EventTarget | null): boolean =>
  target instanceof HTMLElement &&
  (target.isContentEditable || /^(?:INPUT|TEXTAREA|SELECT)$/.test(target.tagName));

const opensSearch = (event: KeyboardEvent): boolean =>
  (event.key === '/' &&
    !event.ctrlKey &&
    !event.metaKey &&
    !event.altKey &&
    !isTyping(event.target)) ||
  (event.key.toLowerCase() === 'k' && (event.ctrlKey || event.metaKey) && !event.shiftKey);

/** The answer to the text that was asked last; an earlier one that comes late is dropped. */
const useEverything = (project: RecordId | null, text: string) => {
  const [answer, setAnswer] = useState<{ text: string; found: Everything } | null>(null);
  useEffect(() => {
    if (text.trim() === '' || project === null) {
      setAnswer(null);
      return;
    }
    let isCurrent = true;
    const span = spanTyped(text, Date.now());
    askWorker((desk) => desk.everything(project, { text, span, most: MOST })).then(
      (found) => isCurrent && setAnswer({ text, found }),
      noteTrouble,
    );
    return () => {
      isCurrent = false;
    };
  }, [project, text]);
  return answer;
};

interface SearchIn {
  /** Whose records are searched; null: places and shoes alone. */
  readonly project: RecordId | null;
  readonly shoes: readonly NamedPlace[];
}

const groupOfPlaces = (name: string, found: readonly NamedPlace[]): readonly ResultGroup[] =>
  found.length === 0
    ? []
    : [{ name, results: found.map((one) => ({ href: one.href, says: one.name })) }];

const Panel = (props: SearchIn & { readonly close: () => void }) => {
  const { project, shoes, close } = props;
  const words = p().search;
  const { route } = useLocation();
  const id = useId();
  const [text, setText] = useState('');
  const [typed, setTyped] = useTyped(text, setText);
  const answer = useEverything(project, text);
  const list = useRef<HTMLDivElement>(null);
  const [active, setActive] = useState(0);
  useEffect(() => setActive(0), [text]);
  const isThere = text.trim() !== '' && (project === null || answer?.text === text);
  const groups = [
    ...groupOfPlaces(
      words.groups.places,
      project === null ? [] : placesFound(placesOf(project), text, MOST),
    ),
    ...(answer && project ? groupsOf(answer.found, project, answer.text) : []),
    ...groupOfPlaces(words.groups.shoes, placesFound(shoes, text, MOST)),
  ];
  const results = groups.flatMap((group) => group.results);
  const at = Math.min(active, results.length - 1);
  useEffect(
    () => list.current?.querySelector('[aria-selected=true]')?.scrollIntoView({ block: 'nearest' }),
    [at],
  );
  const open = (href: string) => {
    close();
    route(href);
  };
  const press = (event: KeyboardEvent) => {
    const step = { ArrowDown: 1, ArrowUp: -1 }[event.key];
    const chosen = results[at];
    if (step !== undefined && results.length > 0) {
      event.preventDefault();
      setActive((at + step + results.length) % results.length);
    } else if (event.key === 'Enter' && chosen && typed === text) {
      event.preventDefault();
      open(chosen.href);
    }
  };
  let number = -1;
  return (
    <>
      <div class="search-field">
        <input
          class="input"
          type="text"
          enterkeyhint="search"
          role="combobox"
          aria-label={words.label}
          placeholder={words.label}
          aria-expanded={results.length > 0}
          aria-controls={id}
          aria-autocomplete="list"
          {...(results.length > 0 && { 'aria-activedescendant': `${id}-${at}` })}
          autocomplete="off"
          value={typed}
          onInput={(event) => setTyped(event.currentTarget.value)}
          onKeyDown={press}
        />
        <button type="button" class="search-close" aria-label={words.close} onClick={close}>
          ×
        </button>
      </div>
      <p class="soft small" role="status">
        {!isThere
          ? words.hint
          : results.length === 0
            ? words.nothing(text.trim())
            : words.found(
                groups.reduce((sum, { found, results: own }) => sum + (found ?? own.length), 0),
              )}
      </p>
      <div id={id} ref={list} class="search-results" role="listbox" aria-label={words.open}>
        {groups.map(({ name, results: own, found }) => (
          <div key={name} role="group" aria-label={name}>
            <div class="search-group" aria-hidden="true">
              <b>{name}</b>
              {found !== undefined && <span class="soft small">{words.counted(MOST, found)}</span>}
            </div>
            {own.map(({ href, says, more }) => {
              const mine = ++number;
              return (
                <a
                  key={href}
                  id={`${id}-${mine}`}
                  class="search-result"
                  role="option"
                  tabIndex={-1}
                  aria-selected={mine === at}
                  href={href}
                  onClick={close}
                  onPointerMove={() => setActive(mine)}
                >
                  <span>{says}</span>
                  {more && <span class="soft small">{more}</span>}
                </a>
              );
            })}
          </div>
        ))}
      </div>
    </>
  );
};

export const SearchBox = (props: SearchIn) => {
  const words = p().search;
  const dialog = useRef<HTMLDialogElement>(null);
  const [isOpen, setOpen] = useState(false);
  const close = () => dialog.current?.close();
  const show = () => {
    // Opened anew it is empty, and its field has the focus.
    setOpen(true);
    if (!dialog.current?.open) dialog.current?.showModal();
  };
  useEffect(() => {
    const press = (event: KeyboardEvent) => {
      if (!opensSearch(event)) return;
      event.preventDefault();
      show();
    };
    window.addEventListener('keydown', press);
    return () => window.removeEventListener('keydown', press);
  }, []);
  useEffect(() => {
    if (isOpen) dialog.current?.querySelector('input')?.focus();
  }, [isOpen]);
  return (
    <>
      <button
        type="button"
        class="frame-search no-print"
        aria-keyshortcuts="/ Control+K"
        onClick={show}
      >
        <svg viewBox="0 0 20 20" aria-hidden="true">
          <circle cx="8.5" cy="8.5" r="5.5" />
          <path d="M12.5 12.5 18 18" />
        </svg>
        <span>{words.open}</span>
      </button>
      <dialog
        ref={dialog}
        class="search"
        aria-label={words.open}
        onClose={() => setOpen(false)}
        onClick={(event) => {
          if (event.target === dialog.current) close();
        }}
      >
        {isOpen && (
          <div class="search-panel">
            <Panel {...props} close={close} />
          </div>
        )}
      </dialog>
    </>
  );
};
