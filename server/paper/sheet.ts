import { createRequire } from 'node:module';
import PDFDocument from 'pdfkit';

/** Carried in the file itself, so that names in any Latin, Greek or Cyrillic spelling print on any machine. */
const fontFile = (name: string) => createRequire(import.meta.url).resolve(`dejavu-fonts-ttf/ttf/${name}.ttf`);

/** Points. A US letter sheet with the margin that every office printer leaves. */
const PAGE = { size: 'LETTER', margin: 54, foot: 30 } as const;
const BOX = 12;
const GAP = 10;

export interface Line {
  /** Stands before the words in bold: `7`, `2 bags`. */
  lead: string;
  words: string;
  notes: string[];
  ticked: boolean;
}

/** A sheet of paper being written from the top: a head, then groups of lines with a box to tick, then what ends it. */
export class Sheet {
  readonly #doc: PDFKit.PDFDocument;
  readonly #width: number;

  /** @param madeOn the day that the sheet stands for, `2026-05-13`; also its date in the file, so that the same list gives the same bytes */
  constructor(title: string, madeOn: string) {
    this.#doc = new PDFDocument({
      size: PAGE.size,
      margins: { top: PAGE.margin, left: PAGE.margin, right: PAGE.margin, bottom: PAGE.margin + PAGE.foot },
      bufferPages: true,
      lang: 'en-US',
      displayTitle: true,
      info: { Title: title, CreationDate: new Date(`${madeOn}T12:00:00Z`) },
    });
    this.#doc.registerFont('plain', fontFile('DejaVuSans')).registerFont('bold', fontFile('DejaVuSans-Bold'));
    this.#width = this.#doc.page.width - 2 * PAGE.margin;
  }

  head(title: string, under: string): void {
    this.#doc.font('bold').fontSize(18).text(title, PAGE.margin, PAGE.margin);
    this.#doc.font('plain').fontSize(10.5).text(under).moveDown(0.6);
  }

  words(text: string): void {
    this.#doc.font('plain').fontSize(11).text(text, PAGE.margin, this.#doc.y, { width: this.#width });
  }

  /** A group's name over a ruled line; kept with its first line. */
  group(name: string): void {
    this.#room(70);
    this.#doc.moveDown(0.7);
    const shown = name.charAt(0).toUpperCase() + name.slice(1);
    this.#doc.font('bold').fontSize(12.5).text(shown, PAGE.margin, this.#doc.y, { width: this.#width });
    this.#rule(this.#doc.y + 2, 1.2);
    this.#doc.y += 8;
  }

  line({ lead, words, notes, ticked }: Line): void {
    const x = PAGE.margin + BOX + GAP;
    const width = this.#width - BOX - GAP;
    const text = `${lead}  ${words}`;
    const under = notes.join(', ');
    this.#doc.font('plain').fontSize(11);
    const tall = this.#doc.heightOfString(text, { width });
    this.#doc.fontSize(9.5);
    this.#room(tall + (under ? this.#doc.heightOfString(under, { width }) : 0) + 8);
    const top = this.#doc.y;
    this.#box(PAGE.margin, top + 1, ticked);
    this.#doc.font('bold').fontSize(11).text(`${lead}  `, x, top, { width, continued: true });
    this.#doc.font('plain').text(words, { width });
    if (under) this.#doc.fontSize(9.5).text(under, x, this.#doc.y, { width });
    this.#doc.y = Math.max(this.#doc.y, top + BOX) + 5;
    this.#rule(this.#doc.y - 2, 0.4);
    this.#doc.y += 3;
  }

  /** Lines to sign on, each with its day; never parted from one another. */
  signatures(words: string, who: readonly string[]): void {
    this.#room(60 + who.length * 52);
    this.#doc.moveDown(1.5);
    this.words(words);
    const day = PAGE.margin + this.#width - 120;
    for (const name of who) {
      const y = this.#doc.y + 38;
      this.#rule(y, 0.8, PAGE.margin, day - 20);
      this.#rule(y, 0.8, day, PAGE.margin + this.#width);
      this.#doc
        .font('plain')
        .fontSize(9.5)
        .text(name, PAGE.margin, y + 3);
      this.#doc.text('Day', day, y + 3);
      this.#doc.y = y + 16;
    }
  }

  /** Numbers the pages and closes the sheet. */
  finish(): Promise<Buffer> {
    const { count } = this.#doc.bufferedPageRange();
    for (let k = 0; k < count; k++) {
      this.#doc.switchToPage(k);
      // The foot lies in the margin, where text would otherwise begin a new page.
      this.#doc.page.margins.bottom = 0;
      const y = this.#doc.page.height - PAGE.margin;
      const options = { width: this.#width, align: 'right', lineBreak: false } as const;
      this.#doc
        .font('plain')
        .fontSize(9)
        .text(`Page ${k + 1} of ${count}`, PAGE.margin, y, options);
    }
    return new Promise((resolve, reject) => {
      const parts: Buffer[] = [];
      this.#doc.on('data', (part: Buffer) => parts.push(part));
      this.#doc.on('end', () => resolve(Buffer.concat(parts))).on('error', reject);
      this.#doc.end();
    });
  }

  #room(points: number): void {
    if (this.#doc.y + points > this.#doc.page.height - PAGE.margin - PAGE.foot) this.#doc.addPage();
  }

  #rule(y: number, weight: number, from: number = PAGE.margin, to = PAGE.margin + this.#width): void {
    this.#doc.lineWidth(weight).moveTo(from, y).lineTo(to, y).stroke();
  }

  #box(x: number, y: number, ticked: boolean): void {
    this.#doc.lineWidth(1).rect(x, y, BOX, BOX).stroke();
    if (!ticked) return;
    this.#doc
      .lineWidth(1.6)
      .moveTo(x + 2.5, y + 6.5)
      .lineTo(x + 5, y + 9.5)
      .lineTo(x + 9.8, y + 2.5)
      .stroke();
  }
}
