import { describe, expect, it } from 'vitest';
import { captionsIn, isCaptions } from '../../parser/transcript/captions.ts';
import { type Cue, wordsOf } from '../../parser/transcript/cues.ts';
import { isTranscript } from '../../parser/transcript/index.ts';
import { stampedIn } from '../../parser/transcript/stamped.ts';

const anyName = () => true;
const said = (cues: readonly Cue[]) => cues.map((c) => [c.at, c.until, c.speaker, wordsOf(c).trim()]);

// W3C WebVTT: The Web Video Text Tracks Format, "WebVTT file body", "WebVTT timestamp" and "WebVTT cue components".
// https://www.w3.org/TR/webvtt1/
describe('WebVTT', () => {
  it('takes cues with and without identifier, hours and settings; leaves notes, styles and regions', () => {
    const file = `\uFEFFWEBVTT - a title
Kind: captions

STYLE
::cue { color: red }

NOTE two hours
of talk

REGION
id:fred

first
00:05.000 --> 00:07.250
scrim on the arch

102:00:01.500 --> 102:00:02.000 align:start position:0%
and the
reveal
`;
    expect(said(captionsIn(file, anyName))).toEqual([
      [5, 7.25, null, 'scrim on the arch'],
      [102 * 3600 + 1.5, 102 * 3600 + 2, null, 'and the reveal'],
    ]);
  });

  it.each([
    ['\n', 'LF'],
    ['\r\n', 'CRLF'],
    ['\r', 'CR'],
  ])('ends lines with %j (%s)', (end) => {
    const file = ['WEBVTT', '', '00:01.000 --> 00:02.000', 'one', '', '00:03.000 --> 00:04.000', 'two'].join(end);
    expect(said(captionsIn(file, anyName)).map((c) => c[3])).toEqual(['one', 'two']);
  });

  it('hears voice spans as speakers, drops other tags, and writes character references out', () => {
    const file = `WEBVTT

00:01.000 --> 00:02.000
<v.loud Mary Ann>lath &amp; <b>plaster</b>, <00:01.500><c.yellow>don&#39;t</c> rush</v>
<v Sam>under 5 &lt; 6&nbsp;mm`;
    expect(said(captionsIn(file, anyName))).toEqual([
      [1, 2, 'Mary Ann', "lath & plaster, don't rush"],
      [1, 2, 'Sam', 'under 5 < 6 mm'],
    ]);
  });

  it('begins with WEBVTT and then nothing, a blank or a line end', () => {
    expect(isCaptions('WEBVTT')).toBe(true);
    expect(isCaptions('WEBVTT\tnotes\n')).toBe(true);
    expect(isCaptions('WEBVTTX\n')).toBe(false);
    expect(isCaptions('the WEBVTT file is on the van')).toBe(false);
  });
});

// SubRip has no standard: common practice, as players read it.
describe('SubRip', () => {
  it('takes numbered cues with commas in their times', () => {
    const file = `1
00:00:01,000 --> 00:00:02,500
{\\an8}<i>need two bags</i>

2
00:01:01,000 --> 00:01:02,500
- of what
- of grit`;
    expect(isTranscript(file)).toBe(true);
    expect(said(captionsIn(file, anyName))).toEqual([
      [1, 2.5, null, 'need two bags'],
      [61, 62.5, null, 'of what'],
      [61, 62.5, null, 'of grit'],
    ]);
  });

  it('keeps a number that is said, and drops the one that counts the next cue', () => {
    const file = `00:00:01,000 --> 00:00:02,000
12

00:00:03,000 --> 00:00:04,000
no blank below
3
00:00:05,000 --> 00:00:06,000
here`;
    expect(said(captionsIn(file, anyName)).map((c) => c[3])).toEqual(['12', 'no blank below', 'here']);
  });

  it('hears a line that rolls on into the next cue once', () => {
    const file = `1
00:00:01,000 --> 00:00:02,000
the arch is

2
00:00:02,000 --> 00:00:03,000
the arch is
out of plumb`;
    expect(said(captionsIn(file, anyName)).map((c) => c[3])).toEqual(['the arch is', 'out of plumb']);
  });
});

describe('plain lines with their time', () => {
  it('reads [m:ss] and [h:mm:ss], names before a colon, and lines that go on', () => {
    const file = `[0:05] Odile: the nave first
then the porch
[75:10] SPEAKER_01: right
[1:15:12] Vestry: two bags`;
    expect(isTranscript(file)).toBe(true);
    expect(said(stampedIn(file, (label) => label !== 'Vestry'))).toEqual([
      [5, null, 'Odile', 'the nave first then the porch'],
      [4510, null, 'SPEAKER_01', 'right'],
      [4512, null, null, 'Vestry: two bags'],
    ]);
  });

  it('is no transcript for one bracket in the middle of a note', () => {
    expect(isTranscript('cut the shelf\n[2:30] plumber came')).toBe(false);
    expect(isTranscript('meet at 2:30 --> bring keys')).toBe(false);
  });
});
