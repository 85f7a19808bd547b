import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { openText } from '../../../engine/sheet/file';
import { type Live, openLive } from '../../../engine/sheet/live';
import { library } from '../../../engine/study/index';
import { OBSERVATIONS, type TrimAnswer } from '../../../engine/study/trim/told';
import { trimFor } from '../../../engine/study/trim/trim';

const opened = openText(readFileSync(new URL('../../designs/quern.tetherwright.json', import.meta.url), 'utf8'));
const live: Live = openLive(opened.ok ? opened.document : ({} as never), library);
const plain = (words: string): string => words.replaceAll('\u00a0', ' ');
const said = (key: string): TrimAnswer => trimFor(key, live, library);
/** "1.2° low" → 1.2 */
const size = (text: string): number => Number.parseFloat(text.replace('−', '-'));

describe('a change for what is seen', () => {
  it.each(OBSERVATIONS.map(({ key }) => key))('has numbers of this design for %s', (key) => {
    const answer = said(key);
    if (!answer.ok) throw new Error(answer.message);
    expect(plain(answer.change)).not.toMatch(/[{}]|NaN/);
    for (const { title, before, after } of answer.figures) {
      expect([title, before]).not.toContain('–');
      expect(title).not.toContain('.');
      expect(after).not.toBe('–');
    }
    expect(answer.figures.some(({ before, after }) => before !== after)).toBe(true);
  });

  it('takes tip weight off a low outboard wing, which then hangs less low', () => {
    const answer = said('outboard_low');
    if (!answer.ok) throw new Error(answer.message);
    expect(plain(answer.change)).toBe('Take 5 g out of the tip weight: 16 g stay.');
    const low = (text: string): number => (text.includes('high') ? -size(text) : size(text));
    const [wing] = answer.figures;
    expect(low(wing!.after)).toBeLessThan(low(wing!.before));
  });

  it('widens the margin of what hunts, slows what is twitchy, and moves the wheels of what noses over', () => {
    const grows = (key: string, title: RegExp): boolean => {
      const answer = said(key);
      if (!answer.ok) throw new Error(answer.message);
      const figure = answer.figures.find((each) => title.test(each.title))!;
      return size(figure.after) > size(figure.before);
    };
    expect(grows('hunting', /static margin/i)).toBe(true);
    expect(grows('slack_overhead', /line pull/i)).toBe(true);
    expect(grows('twitchy', /ratio|elevator/i)).toBe(false);
    expect(grows('sluggish', /ratio|elevator/i)).toBe(true);
    expect(grows('noses_over', /short grass/)).toBe(true);
  });

  it('leaves the open design as it is', () => {
    const before = live.state.m.slice();
    said('hunting');
    expect(live.state.m).toEqual(before);
  });
});
