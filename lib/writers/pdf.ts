import PDFDocument from 'pdfkit';
import type { Pt } from '../drawing/entity.ts';
import type { Page } from '../drawing/page.ts';
import { radians } from '../units/mm.ts';
import type { Canvas, Stroke } from './pdf/canvas.ts';
import { drawMarks } from './pdf/draw-marks.ts';
import { rememberRuns, type Setting } from './pdf/remember-runs.ts';
import { FRACTION_SLASH, setFractions } from './pdf/set-fractions.ts';
import { unpackWoff } from './pdf/unpack-woff.ts';

/** What a reader of the file is told of it. */
export interface PdfInfo {
  readonly title: string;
  /** YYYY-MM-DD; stands as the day on which the file was made, so that the same papers are the same bytes. */
  readonly date: string;
  /** As BCP 47 writes it; `en-US` when left out. */
  readonly language?: string;
}

/** Faces as WOFF. */
export interface PdfFonts {
  readonly regular: Uint8Array;
  readonly bold: Uint8Array;
}

/** Points in a millimetre: a point is 1/72 in. */
const POINT = 72 / 25.4;

/** A page is not wider or higher than this, mm: 200 in, the limit of PDF readers without scaled units. */
const LARGEST = 200 * 25.4;

type Doc = PDFKit.PDFDocument;

/** What pdfkit keeps to itself and this file needs: the catalog, and the face in use as its parser holds it. */
interface Inner {
  readonly _root: { readonly data: { readonly ViewerPreferences: { readonly data: Record<string, string> } } };
  readonly _font: Setting & {
    readonly capHeight: number;
    readonly font: { readonly hasGlyphForCodePoint: (point: number) => boolean };
  };
}
const inner = (doc: Doc): Inner => doc as unknown as Inner;

/**
 * Sheets as PDF 1.7 at their exact size: faces embedded, arcs true to 0.0001 mm, letters as high as they say, fractions set as
 * fractions, a wish to print unscaled. The same sheets give the same bytes.
 *
 * @throws RangeError for a character that the face lacks, a date that is none, and a sheet that no reader can show.
 */
export async function writePdf(pages: readonly Page[], info: PdfInfo, fonts: PdfFonts): Promise<Uint8Array> {
  const made = dayOf(info.date);
  const doc = new PDFDocument({
    pdfVersion: '1.7',
    displayTitle: true,
    lang: info.language ?? 'en-US',
    autoFirstPage: false,
    margin: 0,
    info: { Title: info.title, Creator: 'tablewright', CreationDate: made, ModDate: made },
  });
  inner(doc)._root.data.ViewerPreferences.data['PrintScaling'] = 'None';
  const bytes = collected(doc);
  doc.registerFont('regular', unpackWoff(fonts.regular) as Buffer);
  doc.registerFont('bold', unpackWoff(fonts.bold) as Buffer);
  for (const page of pages) {
    doc.addPage({ size: [pointsOf(page, 'width'), pointsOf(page, 'height')], margin: 0 });
    if (pages.length > 1) doc.outline.addItem(page.name);
    drawMarks(page.marks, canvasOf(doc, page, fonts));
  }
  doc.end();
  return bytes;
}

function dayOf(date: string): Date {
  const day = new Date(`${date}T00:00:00Z`);
  if (!/^\d{4}-\d\d-\d\d$/.test(date) || Number.isNaN(day.getTime())) {
    throw new RangeError(`${JSON.stringify(date)} is no date; write YYYY-MM-DD`);
  }
  return day;
}

/** A side of a sheet in points, free of the noise of the conversion: 215.9 mm are 612. */
function pointsOf(page: Page, side: 'width' | 'height'): number {
  const mm = page[side];
  if (mm > 0 && mm <= LARGEST) return Math.round(mm * POINT * 1e6) / 1e6;
  throw new RangeError(`the ${side} of the sheet ${JSON.stringify(page.name)} is ${mm} mm; over 0 up to ${LARGEST} mm`);
}

function collected(doc: Doc): Promise<Uint8Array> {
  return new Promise((resolve, reject) => {
    const chunks: Uint8Array[] = [];
    doc.on('data', (chunk: Uint8Array) => chunks.push(chunk));
    doc.on('error', reject);
    doc.on('end', () => {
      const bytes = new Uint8Array(chunks.reduce((sum, chunk) => sum + chunk.length, 0));
      let at = 0;
      for (const chunk of chunks) {
        bytes.set(chunk, at);
        at += chunk.length;
      }
      resolve(bytes);
    });
  });
}

/** @throws RangeError naming a character that the face lacks: it would be printed as a box. */
function useFace(
  doc: Doc,
  fonts: PdfFonts,
  text: string,
  height: number,
  bold: boolean,
): { text: string; features: PDFKit.Mixins.OpenTypeFeatures[] } {
  doc.font(bold ? 'bold' : 'regular');
  const face = inner(doc)._font;
  rememberRuns(face, bold ? fonts.bold : fonts.regular);
  const { capHeight, font } = face;
  doc.fontSize((height * POINT * 1000) / capHeight);
  const set = setFractions(text);
  for (const character of set) {
    const point = character.codePointAt(0)!;
    if (point >= 0x20 && font.hasGlyphForCodePoint(point)) continue;
    const number = point.toString(16).toUpperCase().padStart(4, '0');
    throw new RangeError(
      `${JSON.stringify(character)} (U+${number}) is not in the face of the sheets: ${JSON.stringify(text)}`,
    );
  }
  return { text: set, features: set.includes(FRACTION_SLASH) ? ['frac'] : [] };
}

function canvasOf(doc: Doc, page: Page, fonts: PdfFonts): Canvas {
  const { height: tall } = page;
  const point = ([x, y]: Pt): [number, number] => [x * POINT, (tall - y) * POINT];
  let last: Stroke | undefined;
  const setStroke = (look: Stroke): void => {
    if (look.width === last?.width && look.rgb === last.rgb && `${look.dash}` === `${last.dash}`) return;
    last = look;
    doc.lineWidth(look.width * POINT).strokeColor(look.rgb);
    if (look.dash.length > 0) doc.dash(look.dash.map((part) => part * POINT) as unknown as number, {});
    else doc.undash();
  };
  doc.lineJoin('round').lineCap('butt');
  return {
    moveTo: (to) => doc.moveTo(...point(to)),
    lineTo: (to) => doc.lineTo(...point(to)),
    curveTo: (first, second, to) => doc.bezierCurveTo(...point(first), ...point(second), ...point(to)),
    close: () => doc.closePath(),
    stroke(look) {
      setStroke(look);
      doc.stroke();
    },
    fill: (rgb) => doc.fill(rgb),
    width(text, height, bold) {
      const face = useFace(doc, fonts, text, height, bold);
      return doc.widthOfString(face.text, face.features.length > 0 ? { features: face.features } : {}) / POINT;
    },
    letter(text, { at, height, rotation, bold, rgb }) {
      if (text === '') return;
      const face = useFace(doc, fonts, text, height, bold);
      const [x, y] = point(at);
      const turned = rotation !== 0;
      if (turned) {
        const [cos, sin] = [Math.cos(radians(rotation)), Math.sin(radians(rotation))];
        doc.save().transform(cos, -sin, sin, cos, x, y);
      }
      const options = { lineBreak: false, baseline: 'alphabetic' as const };
      doc.fillColor(rgb);
      doc.text(
        face.text,
        turned ? 0 : x,
        turned ? 0 : y,
        face.features.length > 0 ? { ...options, features: face.features } : options,
      );
      if (turned) doc.restore();
    },
  };
}
