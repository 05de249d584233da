import { renderToString } from 'preact-render-to-string';
import { describe, expect, it } from 'vitest';
import { FootMap, zoneKey, type ZoneHeat } from '../../../app/parts/foot-map/foot-map.tsx';
import { languageFile } from '../../../app/terminal/languages.ts';
import type { ZoneCode } from '../../../core/foot/index.ts';

const words = {
  names: (zone: ZoneCode): string => languageFile('en').glossary.zones[zone].name,
  labels: {
    ...{ left: 'left', right: 'right', sole: 'sole', upper: 'upper', unasked: 'nobody asked' },
    joined: languageFile('en').desk.joined,
  },
};
const nothing = (): void => undefined;

const buttonsIn = (html: string): string[] => html.match(/<g[^>]*role="button"[^>]*>/g) ?? [];
const nameOf = (tag: string): string | undefined => /aria-label="([^"]*)"/.exec(tag)?.[1];

describe('the foot map', () => {
  it('offers every zone of both feet as a named button that a keyboard reaches', () => {
    const html = renderToString(<FootMap view="sole" mode="pick" onPick={nothing} {...words} />);
    const buttons = buttonsIn(html);
    expect(buttons).toHaveLength(18);
    expect(new Set(buttons.map(nameOf)).size).toBe(18);
    expect(buttons.map(nameOf)).toContain('left, medial ball');
    for (const button of buttons) {
      expect(button).toContain('tabindex="0"');
      expect(button).toContain('aria-pressed="false"');
    }
  });

  it('presses the picked zone of the picked foot only', () => {
    const html = renderToString(
      <FootMap
        view="upper"
        mode="pick"
        selected={new Set([zoneKey('right', 'U9')])}
        onPick={nothing}
        {...words}
      />,
    );
    const pressed = buttonsIn(html).filter((button) => button.includes('aria-pressed="true"'));
    expect(pressed.map(nameOf)).toEqual(['right, Achilles tendon']);
  });

  it('says the same by hatching and words as by colour, and never shows unasked like zero', () => {
    const heat = new Map<string, ZoneHeat>([
      ['left:P3', { share: 3 / 8, label: '3/8', level: 4 }],
      ['left:P4', { share: 0, label: '0/8', level: 0 }],
    ]);
    const html = renderToString(
      <FootMap view="sole" foot="left" mode="heat" heat={heat} {...words} />,
    );
    expect(html).toContain('aria-label="left, medial ball: 3/8" data-level="4"');
    expect(html).toContain('aria-label="left, central ball: 0/8" data-level="0"');
    expect(html).toContain('aria-label="left, medial heel: nobody asked" data-level="unasked"');
    expect(html.match(/class="foot-map-hatch"/g)).toHaveLength(1);
    expect(html.match(/class="foot-map-unasked"/g)).toHaveLength(7);
    expect(html).toMatch(/<text[^>]*>3\/8<\/text>/);
    expect(buttonsIn(html)).toHaveLength(0);
  });

  it('keeps the ids of patterns apart, and carries no inline style', () => {
    const html = renderToString(
      <div>
        <FootMap view="sole" mode="heat" {...words} />
        <FootMap view="upper" mode="heat" {...words} />
      </div>,
    );
    const ids = [...html.matchAll(/ id="([^"]*)"/g)].map((match) => match[1]);
    expect(ids).toHaveLength(16);
    expect(new Set(ids).size).toBe(16);
    expect(html).not.toContain('style=');
  });
});
