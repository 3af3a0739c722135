import { createRequire } from 'node:module';
import PDFDocument from 'pdfkit';

/** Carried in the file itself, so that names in any Latin, Greek or Cyrillic spelling print on any machine. */
const fontFile = (name: string) => createRequire(import.meta.url).resolve(`dejavu-fonts-ttf/ttf/${name}.ttf`);

/** Points. A US letter sheet with the margin that every office printer leaves. */
const PAGE = { size: 'LETTER', margin: 54, foot: 30 } as const;
const BOX = 12;
const GAP = 10;
/** Points that the lines to sign on take, with the words above them. */
export const SIGNATURES = 110;

export interface Line {
  /** Stands before the words in bold: `7`, `2 bags`. */
  lead: string;
  words: string;
  notes: string[];
  ticked: boolean;
  /** Has a second box at its end, which the other side ticks by hand. */
  accepts?: boolean;
}

/** A sheet of paper being written from the top: a head, then groups of lines with a box to tick, then what ends it. */
export class Sheet {
  readonly #doc: PDFKit.PDFDocument;
  readonly #width: number;
  readonly #title: string;
  /** The group that is being written, named again where it runs onto another page. */
  #group = { name: '', right: '' };

  /** @param madeOn the day that the sheet stands for, `2026-05-13`; also its date in the file, so that the same list gives the same bytes */
  constructor(title: string, madeOn: string) {
    this.#title = title;
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

  /** A group's name over a ruled line, and what the boxes at its right edge are for; kept with its first line. */
  group(name: string, right = ''): void {
    this.#room(70);
    this.#doc.moveDown(0.7);
    this.#group = { name: name.charAt(0).toUpperCase() + name.slice(1), right };
    this.#groupHead('');
  }

  #groupHead(after: string): void {
    const { name, right } = this.#group;
    const top = this.#doc.y;
    const width = this.#width - (right ? 60 : 0);
    this.#doc
      .font('bold')
      .fontSize(12.5)
      .text(name, PAGE.margin, top, { width, continued: after !== '' });
    // An empty text would not end the line.
    if (after) this.#doc.font('plain').text(after, { width });
    const under = this.#doc.y;
    if (right)
      this.#doc
        .font('plain')
        .fontSize(9.5)
        .text(right, PAGE.margin, top + 3, { width: this.#width, align: 'right' });
    this.#doc.y = under;
    this.#rule(this.#doc.y + 2, 1.2);
    this.#doc.y += 8;
  }

  /** @param kept points that must be left under it on the same page */
  line({ lead, words, notes, ticked, accepts = false }: Line, kept = 0): void {
    const x = PAGE.margin + BOX + GAP;
    const width = this.#width - (BOX + GAP) * (accepts ? 2 : 1);
    const text = `${lead}  ${words}`;
    const under = notes.join(', ');
    this.#doc.font('plain').fontSize(11);
    const tall = this.#doc.heightOfString(text, { width });
    this.#doc.fontSize(9.5);
    const tallUnder = under ? this.#doc.heightOfString(under, { width }) : 0;
    if (this.#room(tall + tallUnder + 8 + kept)) this.#groupHead(', continued');
    const top = this.#doc.y;
    this.#box(PAGE.margin, top + 1, ticked);
    if (accepts) this.#box(PAGE.margin + this.#width - BOX, top + 1, false);
    this.#doc.font('bold').fontSize(11).text(`${lead}  `, x, top, { width, continued: true });
    this.#doc.font('plain').text(words, { width });
    if (under) this.#doc.fontSize(9.5).text(under, x, this.#doc.y, { width });
    this.#doc.y = Math.max(this.#doc.y, top + BOX) + 7;
    this.#rule(this.#doc.y - 2, 0.4);
    this.#doc.y += 3;
  }

  /** Lines to sign on, side by side, each with its day; never parted from one another. */
  signatures(words: string, who: readonly string[]): void {
    this.#room(SIGNATURES);
    this.#doc.moveDown(1.2);
    this.words(words);
    const y = this.#doc.y + 40;
    const each = (this.#width - 2 * GAP * (who.length - 1)) / who.length;
    for (const [k, name] of who.entries()) {
      const x = PAGE.margin + k * (each + 2 * GAP);
      const day = x + each - 70;
      this.#rule(y, 0.8, x, day - GAP);
      this.#rule(y, 0.8, day, x + each);
      this.#doc
        .font('plain')
        .fontSize(9.5)
        .text(name, x, y + 3);
      this.#doc.text('Day', day, y + 3);
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
      this.#doc.font('plain').fontSize(9);
      // A sheet that comes loose still says whose it is.
      this.#doc.text(this.#title, PAGE.margin, y, { width: this.#width - 90, height: 11, ellipsis: true });
      this.#doc.text(`Page ${k + 1} of ${count}`, PAGE.margin, y, {
        width: this.#width,
        align: 'right',
        lineBreak: false,
      });
    }
    return new Promise((resolve, reject) => {
      const parts: Buffer[] = [];
      this.#doc.on('data', (part: Buffer) => parts.push(part));
      this.#doc.on('end', () => resolve(Buffer.concat(parts))).on('error', reject);
      this.#doc.end();
    });
  }

  /** Begins another page where so many points are not left on this one. */
  #room(points: number): boolean {
    const full = this.#doc.y + points > this.#doc.page.height - PAGE.margin - PAGE.foot;
    if (full) this.#doc.addPage();
    return full;
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
