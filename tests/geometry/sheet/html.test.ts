import fc from 'fast-check';
import { beforeAll, describe, expect, it } from 'vitest';
import type { Estimate } from '../../../geometry/estimate.ts';
import { figure } from '../../../geometry/sheet/figure.ts';
import { sheetBody, sheetPage } from '../../../geometry/sheet/html.ts';
import { html } from '../../../geometry/sheet/markup.ts';
import { toResult } from '../../../geometry/sheet/result.ts';
import { unworn, worn } from './worn-plate.ts';

let estimate: Estimate;
let body: string;
beforeAll(() => {
  estimate = worn();
  body = sheetBody(estimate);
});

describe('sheetBody', () => {
  it('escapes what a person wrote: a title with a script in it is text', () => {
    expect(body).toContain(
      '<h1>Scoured plate &lt;script&gt;alert(&quot;mark&quot;)&lt;/script&gt; &amp; spare</h1>',
    );
    expect(body).not.toContain('<script');
    expect(body).toContain('wing &quot;B&quot;');
    expect(sheetPage(estimate)).toContain('<title>Scoured plate &lt;script&gt;');
  });

  it('escapes names of materials and packs, notes and warnings too', () => {
    const hostile = '"><img src=x onerror=alert(1)>';
    const text = sheetBody({
      ...estimate,
      job: {
        ...estimate.job,
        notes: hostile,
        filler: { ...estimate.job.filler, name: hostile },
        coat: { ...estimate.job.coat, name: hostile },
      },
      filler: { ...estimate.filler, packs: [{ label: hostile, count: 1 }] },
      warnings: [{ code: 'x', field: hostile, text: hostile }],
    });
    expect(text).not.toContain('<img');
    // Notes; mixes, coats and packs tables; pack in headline and table; warning field and text.
    expect(text.split('&quot;&gt;&lt;img').length - 1).toBeGreaterThanOrEqual(8);
  });

  it('is well formed: every element that opens closes, in order', () => {
    for (const text of [body, sheetBody(unworn())]) expect(openAtEnd(text)).toEqual([]);
  });

  it('asks for nothing a strict content policy refuses: no style attribute, script or address', () => {
    expect(body).not.toMatch(/\sstyle=|<style|<script|\son\w+=|href=|src=|url\((?!#)/);
  });

  it('draws a map for each worn face, with a clipping shape of its own', () => {
    // Three worn faces, and one wall that is thinner than the least.
    expect(body.match(/<svg /g)).toHaveLength(4);
    const ids = [...body.matchAll(/<clipPath id="([^"]+)"/g)].map(([, id]) => id);
    expect(new Set(ids).size).toBe(4);
    for (const id of ids) expect(body).toContain(`clip-path="url(#${id})"`);
    expect(sheetBody(unworn())).not.toContain('<svg');
  });

  it('prints the figures of the result', () => {
    const { filler, coat, parts } = toResult(estimate);
    for (const text of [
      `Mix ${figure(filler.volume)} mL of putty in 1 mix`,
      `Mix ${figure(coat.volume)} mL of coat for 2 coats`,
      `plate: ${parts[0].thinnest.remaining.toFixed(2)} mm of wall left`,
      `>${filler.batches[0].weigh?.partA}</td>`,
      `>${figure(coat.perCoat[0])}</td>`,
    ]) {
      expect(body).toContain(text);
    }
    for (const { text, source } of estimate.cautions) {
      expect(body).toContain(text.replaceAll("'", '&#39;'));
      expect(body).toContain(source.replaceAll("'", '&#39;'));
    }
    expect(body).not.toMatch(/NaN|undefined|null|Infinity|\[object/);
  });

  it('leaves lines to write on', () => {
    for (const blank of ['Date', 'Job number', 'Fitter', 'Checked before restart']) {
      expect(body).toContain(`<span>${blank}</span>`);
    }
  });
});

describe('sheetPage', () => {
  it('is one page that needs nothing beside it, under 1 MB', () => {
    const page = sheetPage(estimate);
    expect(page).toMatch(/^<!doctype html>/);
    expect(page).toContain('@page');
    expect(page).toContain(body);
    expect(page).not.toMatch(/<link|https?:/);
    expect(page.length).toBeLessThan(1_000_000);
  });
});

describe('html', () => {
  it('lets no text out of its place, whatever it is', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme' }), (text) => {
        const { markup } = html`<p title="${text}">${text}</p>`;
        const [, title, inner] = /^<p title="([^"]*)">([^<]*)<\/p>$/s.exec(markup) ?? [];
        // Control characters other than tab and line breaks are left out on purpose.
        const kept = text.replace(/[^\P{Cc}\t\n\r]/gu, '');
        expect(decoded(title)).toBe(kept);
        expect(decoded(inner)).toBe(kept);
      }),
    );
  });

  it('puts markup in as it is and lists in a row', () => {
    const items = ['a<b', 'c'].map((text) => html`<li>${text}</li>`);
    expect(html`<ul>${items}${null}</ul>`.markup).toBe('<ul><li>a&lt;b</li><li>c</li></ul>');
  });
});

function decoded(text: string): string {
  const signs: Record<string, string> = { amp: '&', lt: '<', gt: '>', quot: '"', '#39': "'" };
  return text.replace(/&(amp|lt|gt|quot|#39);/g, (_, name) => signs[name]);
}

/** Elements left open; throws when one closes that is not the last opened. */
function openAtEnd(markup: string): string[] {
  const open: string[] = [];
  for (const [, close, name, , alone] of markup.matchAll(
    /<(\/?)([a-zA-Z][\w-]*)((?:\s+[\w-]+="[^"]*")*)\s*(\/?)>/g,
  )) {
    if (alone === '/') continue;
    if (close !== '/') open.push(name);
    else if (open.pop() !== name) throw new Error(`</${name}> closes what is not open`);
  }
  return open;
}
