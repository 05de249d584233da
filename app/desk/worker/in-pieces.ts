/**
 * How does a long answer reach the page without stopping it? Whatever a message holds is made anew in one go when it
 * arrives. Long lists of an answer therefore follow in messages of their own, and the page answers between them.
 */
import type { TransferHandler } from 'comlink';

/** Longer lists are cut; about a thousand small objects are made in some milliseconds. */
export const MOST_IN_PIECE = 250;

type Path = readonly (string | number)[];

export interface CutAnswer {
  /** The answer with its long lists empty. */
  readonly rest: unknown;
  /** In order: where in the answer the items belong. */
  readonly pieces: readonly { readonly path: Path; readonly items: readonly unknown[] }[];
}

const isPlain = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null && Object.getPrototypeOf(value) === Object.prototype;

const holdsObjects = (list: readonly unknown[]): boolean => typeof list[0] === 'object';

/** Cuts lists of objects that are longer than a piece, wherever they lie; the answer itself stays as it is. */
export const cutAnswer = (answer: unknown): CutAnswer => {
  const pieces: { path: Path; items: readonly unknown[] }[] = [];
  const cut = (value: unknown, path: Path): unknown => {
    if (Array.isArray(value)) {
      if (value.length <= MOST_IN_PIECE || !holdsObjects(value))
        return value.map((one, at) => cut(one, [...path, at]));
      for (let at = 0; at < value.length; at += MOST_IN_PIECE)
        pieces.push({ path, items: value.slice(at, at + MOST_IN_PIECE) });
      return [];
    }
    if (!isPlain(value)) return value;
    return Object.fromEntries(
      Object.entries(value).map(([key, one]) => [key, cut(one, [...path, key])]),
    );
  };
  return { rest: cut(answer, []), pieces };
};

/** Puts items where they belong. */
export const addPiece = (rest: unknown, { path, items }: CutAnswer['pieces'][number]): void => {
  const list = path.reduce<unknown>(
    (within, key) => (within as Record<string | number, unknown>)[key],
    rest,
  );
  (list as unknown[]).push(...items);
};

interface Sent {
  readonly rest: unknown;
  /** How many pieces follow, and by which way. */
  readonly left: number;
  readonly port: MessagePort | null;
}

const collect = ({ rest, left, port }: Sent): unknown => {
  if (!port) return rest;
  return new Promise((done) => {
    let missing = left;
    port.onmessage = ({ data }: MessageEvent<CutAnswer['pieces'][number]>) => {
      addPiece(rest, data);
      if (--missing > 0) return;
      port.close();
      done(rest);
    };
  });
};

/**
 * For Comlink, under one name on both sides. The page's side gives a promise, which Comlink hands on as the answer.
 * @param sends whether this side is the worker, whose answers are cut
 */
export const inPieces = (sends: boolean): TransferHandler<unknown, Sent> => ({
  canHandle: (value): value is unknown => sends && (Array.isArray(value) || isPlain(value)),
  serialize: (value) => {
    const { rest, pieces } = cutAnswer(value);
    if (pieces.length === 0) return [{ rest, left: 0, port: null }, []];
    const { port1, port2 } = new MessageChannel();
    for (const piece of pieces) port1.postMessage(piece);
    return [{ rest, left: pieces.length, port: port2 }, [port2]];
  },
  deserialize: collect,
});
