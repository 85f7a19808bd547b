import { parseHTML } from 'linkedom';
import { expect, test } from 'vitest';
import type { Fault, NameInfo } from '../../../engine/index';
import { noteHtml } from '../../../workbook/cells/note/html';

const shown: Readonly<Record<string, string>> = {
  pull: '25.5 N',
  stock: 'balsa <b>& "ply"',
  'reading.said1': '51.0 N',
  'reading.said2': '*3*',
};
const fault = (path: string, state: Fault['state']): Fault => ({ cell: 'n', path, state, message: 'Nothing.' });

function html(text: string, faults: readonly Fault[] = []): string {
  return noteHtml(
    { name: 'reading', text },
    {
      shown: (path) => shown[path] ?? '–',
      name: (path) => (path === 'pull' || path === 'stock' ? ({ path } as NameInfo) : undefined),
      faultAt: (path) => faults.find((each) => each.path === path),
    },
  );
}
const said = (value: string): string => `<span class="said">${value}</span>`;

test('a value stands in its place with its unit, which no line break parts from it', () => {
  expect(html('The pull is **{pull}**.')).toBe(`<p>The pull is <strong>${said('25.5\u00a0N')}</strong>.</p>`);
  expect(html('Twice: {2 × pull}')).toBe(`<p>Twice: ${said('51.0\u00a0N')}</p>`);
});

test('what a value is made of is no markup', () => {
  expect(html('{stock}')).toBe(`<p>${said('balsa\u00a0&lt;b&gt;&amp;\u00a0&quot;ply&quot;')}</p>`);
  expect(html('{pull}{1 + 2}')).toBe(`<p>${said('25.5\u00a0N')}${said('*3*')}</p>`);
  expect(html('`{pull}`')).toBe(`<p><code>${said('25.5\u00a0N')}</code></p>`);
  expect(html('[way](# "{stock}")')).toBe(
    '<p><a href="#" title="balsa\u00a0&lt;b&gt;&amp;\u00a0&quot;ply&quot;">way</a></p>',
  );
});

test('a formula at fault stands there as it was typed; one that waits is a dash', () => {
  expect(html('Lead {led}', [fault('reading.said1', 'fault')])).toBe(
    '<p>Lead <span class="said at-fault">{led}</span></p>',
  );
  expect(html('Lead {x}', [fault('reading.said1', 'waits')])).toBe(`<p>Lead ${said('51.0\u00a0N')}</p>`);
});

test('an escaped brace is a brace, raw HTML is shown as typed, and signs that hold places are taken out', () => {
  expect(html('\\{pull\\} <b>x</b>')).toBe('<p>{pull} &lt;b&gt;x&lt;/b&gt;</p>');
  expect(html('a\uE0000\uE001b')).toBe('<p>a0b</p>');
});

test('a link leads within the page or to the web, where it opens a tab that knows nothing of this one', () => {
  const away = 'target="_blank" rel="noopener noreferrer"';
  expect(html('[a](#cell-wing)')).toBe('<p><a href="#cell-wing">a</a></p>');
  expect(html('[a](https://example.org/x "t")')).toBe(`<p><a href="https://example.org/x" ${away} title="t">a</a></p>`);
  expect(html('<HTTP://example.org>')).toBe(`<p><a href="HTTP://example.org" ${away}>HTTP://example.org</a></p>`);
  expect(html('[a][b]\n\n[b]: https://example.org')).toBe(`<p><a href="https://example.org" ${away}>a</a></p>\n`);
});

test.each([
  'javascript:alert(1)',
  'JaVaScRiPt:alert(1)',
  'java&#115;cript:alert(1)',
  'data:text/html,x',
  'vbscript:x',
  'blob:x',
  'file:///etc/passwd',
  'mailto:a@example.org',
  'irc://example.org',
  'other.html',
  '//example.org',
  '/x',
])('the address %s is left out of a link', (address) => {
  expect(html(`[a](${address})`)).toBe('<p><a>a</a></p>');
  expect(html(`[a][b]\n\n[b]: ${address}`)).toMatch(/^<p><a>a<\/a><\/p>/);
});

test('a picture is a link, so that nothing is fetched', () => {
  expect(html('![a](https://example.org/x.png)')).toBe(
    '<p>!<a href="https://example.org/x.png" target="_blank" rel="noopener noreferrer">a</a></p>',
  );
});

test.each([
  '<script>alert(1)</script>',
  '<img src=x onerror=alert(1)>',
  '<svg onload=alert(1)>',
  '<iframe srcdoc="<script>">',
  '<a href="javascript:alert(1)">x</a>',
  '[a](https://example.org/"onmouseover="alert(1))',
  '[a](https://example.org "x\\" onmouseover=\\"alert(1)")',
  '`<b onclick=x>`',
  '    <script>x</script>',
])('the markup of %s makes no element and no attribute of its own', (text) => {
  const { document } = parseHTML(`<html><body>${html(text)}</body></html>`);
  const all = [...document.body.querySelectorAll('*')];
  expect(all.map((each) => each.tagName.toLowerCase()).filter((tag) => !/^(p|a|code|pre)$/.test(tag))).toEqual([]);
  const names = all.flatMap((each) => [...each.attributes].map(({ name }) => name));
  expect(names.filter((name) => !/^(href|target|rel|title)$/.test(name))).toEqual([]);
});
