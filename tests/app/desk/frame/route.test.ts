/** Every address of the desk opens its place, and every link is an address that opens. */
import { describe, expect, it } from 'vitest';
import {
  addressOf,
  linksOf,
  newShoe,
  routeOf,
  tabOf,
  tabs,
} from '../../../../app/desk/frame/route.ts';
import { idOf } from '../../../core/records/make.ts';

const project = idOf(1);

describe('addresses', () => {
  it('open what belongs to no project', () => {
    expect(routeOf('/desk')).toEqual({ at: 'shoes' });
    expect(routeOf('/desk/')).toEqual({ at: 'shoes' });
    expect(routeOf(newShoe())).toEqual({ at: 'new' });
    expect(routeOf(newShoe('tables'))).toEqual({ at: 'new', tables: true });
    expect(routeOf(newShoe({ like: project }))).toEqual({ at: 'new', like: project });
    expect(routeOf('/desk/group')).toEqual({ at: 'group' });
  });

  it('open each place, and what lies in it', () => {
    for (const tab of tabs) {
      expect(routeOf(addressOf(project, tab))).toEqual({
        at: 'project',
        project,
        place: tab,
        rest: [],
      });
      expect(tabOf(tab)).toBe(tab);
    }
    const links = linksOf(project);
    expect(routeOf(links.pair(idOf(2)))).toMatchObject({ place: 'pairs', rest: [idOf(2)] });
    expect(routeOf(links.check(idOf(3)))).toMatchObject({
      place: 'wear',
      rest: ['checks', idOf(3)],
    });
    expect(routeOf(links.zone('left', 'U3'))).toMatchObject({
      place: 'shoe',
      rest: ['zones', 'left', 'U3'],
    });
  });

  it('mark the tab that a further place belongs to', () => {
    expect(tabOf('rounds')).toBe('sheet');
    expect(tabOf('report')).toBe('verdict');
  });

  it('open the sheet where the place is unknown, and the new place of a former one', () => {
    expect(routeOf(`/desk/${project}/nowhere`)).toMatchObject({ place: 'sheet', rest: [] });
    expect(routeOf(`/desk/${project}/findings`)).toMatchObject({ place: 'changes' });
    expect(routeOf(`/desk/${project}/comfort`)).toMatchObject({ place: 'shoe', rest: ['comfort'] });
  });
});
