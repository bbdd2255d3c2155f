import PDFDocument from 'pdfkit';
import { describe, expect, it } from 'vitest';
import { textWidth } from '../drawings/text-width.js';
import { addFonts, lackingIn, Measure, settable } from './type.js';

const doc = new PDFDocument({ font: '' });
addFonts(doc);
const measure = new Measure(doc);

describe('the fonts of the PDF', () => {
  it('set no text of a drawing wider than the drawing keeps free for it', () => {
    const texts = [
      'Noor, sitting',
      '33 1/8 in away',
      'MONITOR',
      'WWW',
      'mm',
      '1234567890',
      'walkway “Behind”, 31 in clear',
      'Ærøskøbing',
      'Ольга',
    ];
    for (const text of texts) {
      expect(measure.width(text, 'regular', 12), text).toBeLessThanOrEqual(textWidth(text));
      expect(measure.width(text, 'strong', 12), text).toBeLessThanOrEqual(textWidth(text, true));
    }
  });

  it('compose what can be composed, and show what they lack', () => {
    expect(settable('Zoe\u0308\n\tand 山\u0000')).toBe('Zoë and \ufffd');
    expect(lackingIn('Zoe\u0308 山 山 🎚')).toEqual(['山', '🎚']);
    expect(lackingIn('½ − × ″ ′ ° … ‘ ’ “ ” – · ²')).toEqual([]);
  });
});
