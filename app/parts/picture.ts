/**
 * Drawings of a page as one picture that stands alone: SVG for a drawing program, PNG for a message.
 *
 * The drawings are copied into a part of the page that has the light theme, and every style that decides
 * their look is written out, so that no style sheet is needed where the picture is opened.
 */

export interface PictureParts {
  readonly title: string;
  /** Side by side, each with a heading; `drawing` may hold several SVG elements. */
  readonly columns: readonly { readonly heading: string; readonly drawing: Element }[];
  /** Below the columns. */
  readonly legend: Element;
  readonly notes: readonly string[];
}

const SVG = 'http://www.w3.org/2000/svg';
const GAP = 24;
const LINE = 26;
const INK = '#1c2430';
const PAPER = '#fffdf8';

const STYLES = [
  'fill',
  'fill-opacity',
  'stroke',
  'stroke-opacity',
  'stroke-width',
  'stroke-dasharray',
  'stroke-linecap',
  'stroke-linejoin',
  'paint-order',
  'opacity',
  'font-family',
  'font-size',
  'font-weight',
  'text-anchor',
  'dominant-baseline',
] as const;

/** Colours of any notation as rgb() or rgba(): older drawing programs know no other. */
const plainColour = (() => {
  let canvas: CanvasRenderingContext2D | null = null;
  const known = new Map<string, string>();
  return (colour: string): string => {
    if (!/^(color|oklab|oklch|lab|lch|hwb)\(/.test(colour)) return colour;
    const found = known.get(colour);
    if (found !== undefined) return found;
    canvas ??= document.createElement('canvas').getContext('2d', { willReadFrequently: true });
    if (!canvas) return colour;
    canvas.clearRect(0, 0, 1, 1);
    canvas.fillStyle = colour;
    canvas.fillRect(0, 0, 1, 1);
    const [r = 0, g = 0, b = 0, a = 255] = canvas.getImageData(0, 0, 1, 1).data;
    const plain = a === 255 ? `rgb(${r}, ${g}, ${b})` : `rgba(${r}, ${g}, ${b}, ${a / 255})`;
    known.set(colour, plain);
    return plain;
  };
})();

/** Writes the look of `from` and all it holds into its copy `to`. */
const writeStyles = (from: Element, to: Element): void => {
  const style = getComputedStyle(from);
  // As attributes: a style attribute would need a hole in the Content-Security-Policy.
  for (const name of STYLES) {
    const value = style.getPropertyValue(name);
    const plain =
      name === 'fill' || name === 'stroke'
        ? plainColour(value.replace(/url\("?[^#"]*(#[^")]+)"?\)/, 'url($1)'))
        : value;
    if (plain !== '') to.setAttribute(name, plain);
  }
  for (const name of [
    'class',
    'style',
    'role',
    'tabindex',
    'aria-label',
    'aria-pressed',
    'aria-hidden',
  ])
    to.removeAttribute(name);
  for (let at = 0; at < from.children.length; at++)
    writeStyles(from.children[at] as Element, to.children[at] as Element);
};

const element = (name: string, attributes: Record<string, string | number>): SVGElement => {
  const made = document.createElementNS(SVG, name);
  for (const [key, value] of Object.entries(attributes)) made.setAttribute(key, String(value));
  return made;
};

const words = (text: string, y: number, bold = false): SVGElement => {
  const line = element('text', {
    x: GAP,
    y,
    'font-family': 'sans-serif',
    'font-size': bold ? 21 : 16,
    'font-weight': bold ? 650 : 400,
    fill: INK,
  });
  line.textContent = text;
  return line;
};

/** Words broken into lines of about so many characters; Chinese letters take the room of two. */
const broken = (text: string, most: number): string[] => {
  const lines: string[] = [];
  let [line, room] = ['', most];
  for (const piece of text.match(
    /[\u3000-\u9fff\uff00-\uffef]|[^\s\u3000-\u9fff\uff00-\uffef]+\s*|\s+/g,
  ) ?? []) {
    const width = /[\u3000-\u9fff\uff00-\uffef]/.test(piece) ? 2 : piece.length;
    if (width > room && line !== '') {
      lines.push(line.trimEnd());
      [line, room] = ['', most];
    }
    line += piece;
    room -= width;
  }
  return line.trim() === '' ? lines : [...lines, line.trimEnd()];
};

/** The parts as one SVG. */
export const pictureOf = ({ title, columns, legend, notes }: PictureParts): SVGSVGElement => {
  const stage = document.createElement('div');
  stage.className = 'on-white';
  stage.style.cssText = 'position:absolute;inset-inline-start:-100000px;inline-size:800px';
  const copies = columns.map(({ drawing }) =>
    stage.appendChild(drawing.cloneNode(true) as Element),
  );
  const legendCopy = stage.appendChild(legend.cloneNode(true) as Element);
  document.body.append(stage);
  try {
    const drawn = (copy: Element) => [...copy.querySelectorAll('svg')];
    const copied = (svg: SVGSVGElement, x: number, y: number, scale: number): SVGElement => {
      const { width, height } = svg.viewBox.baseVal;
      const own = svg.cloneNode(true) as SVGSVGElement;
      writeStyles(svg, own);
      for (const [key, value] of Object.entries({
        x,
        y,
        width: width * scale,
        height: height * scale,
        overflow: 'visible',
      }))
        own.setAttribute(key, String(value));
      return own;
    };

    let [right, bottom] = [GAP, GAP + 2 * LINE];
    const top = bottom + LINE;
    const inside: SVGElement[] = [];
    for (const [at, copy] of copies.entries()) {
      const heading = words(columns[at]?.heading ?? '', top - 8);
      heading.setAttribute('x', String(right));
      inside.push(heading);
      for (const svg of drawn(copy)) {
        const { width, height } = svg.viewBox.baseVal;
        inside.push(copied(svg, right, top, 1));
        right += width + GAP;
        bottom = Math.max(bottom, top + height);
      }
      right += GAP;
    }
    const width = Math.max(right, 720);
    bottom += GAP;
    for (const svg of drawn(legendCopy)) {
      inside.push(copied(svg, GAP, bottom, 1));
      bottom += svg.viewBox.baseVal.height + GAP;
    }
    const most = Math.floor((width - 2 * GAP) / 8);
    const lines = [
      words(title, GAP + LINE, true),
      ...notes.flatMap((note) => broken(note, most)).map((line) => words(line, (bottom += LINE))),
    ];
    bottom += GAP;
    const whole = element('svg', {
      xmlns: SVG,
      viewBox: `0 0 ${width} ${bottom}`,
      width,
      height: bottom,
    }) as SVGSVGElement;
    whole.append(element('rect', { width, height: bottom, fill: PAPER }), ...inside, ...lines);
    return whole;
  } finally {
    stage.remove();
  }
};

/** The picture as the bytes of an SVG file. */
export const svgFile = (picture: SVGSVGElement): Uint8Array =>
  new TextEncoder().encode(
    `<?xml version="1.0" encoding="UTF-8"?>\n${new XMLSerializer().serializeToString(picture)}`,
  );

/** The picture as the bytes of a PNG file, twice as large for print. */
export const pngFile = async (picture: SVGSVGElement): Promise<Uint8Array> => {
  const { width, height } = picture.viewBox.baseVal;
  const image = new Image();
  const source = URL.createObjectURL(
    new Blob([svgFile(picture).slice()], { type: 'image/svg+xml' }),
  );
  try {
    image.src = source;
    await image.decode();
    const canvas = document.createElement('canvas');
    canvas.width = 2 * width;
    canvas.height = 2 * height;
    const context = canvas.getContext('2d');
    if (!context) throw new Error('this browser draws no pictures');
    context.drawImage(image, 0, 0, canvas.width, canvas.height);
    const blob = await new Promise<Blob | null>((done) => canvas.toBlob(done, 'image/png'));
    if (!blob) throw new Error('this browser writes no PNG');
    return new Uint8Array(await blob.arrayBuffer());
  } finally {
    URL.revokeObjectURL(source);
  }
};
