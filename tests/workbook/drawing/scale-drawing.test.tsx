import { expect, test } from 'vitest';
import { ScaleDrawing } from '../../../workbook/drawing/index';
import { normalised, openPage } from './page';
import { quernNames, quernShapes, quernValues } from './quern';

const moved = { engine: -0.138, cg: 0.0495 };

function draw(width: number, arrangement: 'column' | 'strip'): Element {
  const page = openPage();
  page.show(
    <ScaleDrawing
      shapes={quernShapes(moved)}
      ghost={quernShapes()}
      names={quernNames}
      values={quernValues(moved)}
      title="Quern 25"
      arrangement={arrangement}
      width={width}
    />,
  );
  return page.body.querySelector('svg')!;
}

test.each([
  ['column', 340],
  ['strip', 360],
] as const)('the Quern as a %s of %i px is the drawing that was looked at', async (arrangement, width) => {
  await expect(normalised(draw(width, arrangement))).toMatchFileSnapshot(`pictures/quern-${arrangement}.svg.snap`);
});

test('the drawing is an image with its summary in words', () => {
  const svg = draw(340, 'column');
  expect(svg.getAttribute('role')).toBe('img');
  expect(svg.getAttribute('aria-label')).toBe(
    'Quern 25: plan and side view, scale 1 : 15. CG 49.5\u00a0mm; guide 62\u00a0mm, 12.5\u00a0mm behind the CG; neutral point 61.2\u00a0mm; ' +
      'engine −138\u00a0mm. Stands elsewhere in the baseline: engine, propeller, CG.',
  );
  expect(svg.textContent).toContain('scale 1 : 15, sizes in mm');
});

test('the first CG mark is the one in the plan', () => {
  const mark = draw(340, 'column').querySelector('[data-mark="cg"]');
  expect(mark?.getAttribute('data-view')).toBe('plan');
});

test('a sheet without parts says what to add', () => {
  const page = openPage();
  page.show(<ScaleDrawing shapes={[]} names={quernNames} values={quernValues()} title="Quern 25" />);
  expect(page.body.textContent).toBe('Nothing to draw yet: give the sheet a wing, a body or an engine.');
});
