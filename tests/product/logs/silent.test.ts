import { describe, expect, it } from 'vitest';
import { folderWith, leat } from '../../support/leat.js';
import { xlsx } from '../../support/xlsx.js';

const mapped = `date: { column: Date }
columns:
  Ammonia: { reads: ammonia, in: tank, unit: mg N/L }
`;

describe('a spreadsheet', () => {
  const date = (row: number): string[] => [`2026-03-0${row}`];
  const formula = (place: string, inner: string): string => `<c r="${place}">${inner}</c>`;
  const rows = [
    ['Date', 'Ammonia'],
    [...date(1), '0.5'],
    [...date(2), formula('B3', '<f>B2*2</f>')],
    [...date(3), '<c r="B4" t="e"><f>1/0</f><v>#DIV/0!</v></c>'],
    [...date(4), formula('B5', '<f t="shared" si="0"/>')],
    [...date(5), formula('B6', '<f>B2*2</f><v>1</v>')],
  ];
  const said = async (sheets: Parameters<typeof xlsx>[0], ...more: string[]) => {
    const folder = folderWith({ 'log.xlsx': xlsx(sheets), 'log.map': mapped });
    return leat(['log', 'log.xlsx', ...more], folder);
  };

  it('tells of formulas without a value and of errors, and reads a formula with one', async () => {
    const { out, code } = await said({ Log: rows }, '--map', 'log.map');
    expect(code).toBe(0);
    expect(out).toMatch(
      /"=B2\*2" {4}a formula whose value the file does not hold: left out {2}and 1 more like it$/m,
    );
    expect(out).toContain('"#DIV/0!"  an error of the spreadsheet: left out');
    expect(out).toContain('odd values: 3 of 2 kinds');
    expect(out).toMatch(/ammonia {3}tank {3}mg N\/L +2 /);
    const { out: each } = await said({ Log: rows }, '--map', 'log.map', '--all');
    expect(each).toContain('"=B2*2"    a formula whose value the file does not hold: left out');
    expect(each).toContain('"="        a formula whose value the file does not hold: left out');
  });

  it('whose text comes of a formula without a value is refused by the cell', async () => {
    const { code, err } = await said({
      Log: [
        ['Date', 'Ammonia'],
        [...date(1), '<c r="B2" t="str"><f>A1</f></c>'],
      ],
    });
    expect([code, err]).toEqual([
      2,
      'log.xlsx: cannot be read as a spreadsheet: cell B2 holds a formula whose value the file does not hold: open it in a spreadsheet program and save it\n',
    ]);
  });

  it('tells that only its first sheet is read, in a guess too', async () => {
    const sheets = { Log: rows.slice(0, 2), 'Fish &amp; feed': [['x']], Old: [['y']] };
    const line = 'only the first, "Log", is read';
    expect((await said(sheets)).out).toContain(`look: 2 more sheets (Fish & feed, Old): ${line}`);
    const { out } = await said(sheets, '--map', 'log.map');
    expect(out).toContain(`"Fish & feed, Old"  2 more sheets: ${line}`);
    const one = await said({ Log: rows.slice(0, 2) }, '--map', 'log.map');
    expect(one.out).toContain('nothing odd');
  });

  it.each([
    ['', '2026-03-01'],
    ['<workbookPr date1904="0"/>', '2026-03-01'],
    ['<workbookPr date1904="false"/>', '2026-03-01'],
    ['<workbookPr date1904="1"/>', '2030-03-02'],
    ['<workbookPr defaultThemeVersion="7" date1904="true"/>', '2030-03-02'],
  ])('counts plain numbers of days from 1904 where its workbook does: %s', async (head, first) => {
    const number = (place: string, value: number): string => `<c r="${place}"><v>${value}</v></c>`;
    const folder = folderWith({
      'log.map': mapped,
      'log.xlsx': xlsx({ Log: [rows[0], [number('A2', 46082), number('B2', 0.5)]] }, { head }),
    });
    const { out, err, code } = await leat(['log', 'log.xlsx', '--map', 'log.map', '--json'], folder);
    expect([code, err]).toEqual([0, '']);
    expect(JSON.parse(out)).toMatchObject({ from: first, to: first });
  });

  it.each(['1', 'true'])('counts its dates from 1904 too: date1904="%s"', async (flag) => {
    const styles =
      '<styleSheet xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main"><cellXfs count="2"><xf numFmtId="0"/><xf numFmtId="14"/></cellXfs></styleSheet>';
    const relations = 'http://schemas.openxmlformats.org/officeDocument/2006/relationships';
    const listed = (id: string, type: string, target: string): string =>
      `<Relationship Id="${id}" Type="${relations}/${type}" Target="${target}"/>`;
    const more = {
      'xl/styles.xml': styles,
      'xl/_rels/workbook.xml.rels': `<Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships">${listed('rId1', 'worksheet', 'worksheets/sheet1.xml')}${listed('rId2', 'styles', 'styles.xml')}</Relationships>`,
    };
    const head = `<workbookPr date1904="${flag}"/>`;
    const book = xlsx(
      { Log: [rows[0], ['<c r="A2" s="1"><v>44620</v></c>', '<c r="B2"><v>1</v></c>']] },
      { head, more },
    );
    const { out, err } = await leat(
      ['log', 'log.xlsx', '--map', 'log.map', '--json'],
      folderWith({ 'log.map': mapped, 'log.xlsx': book }),
    );
    expect(err).toBe('');
    expect(JSON.parse(out)).toMatchObject({ from: '2026-03-01', to: '2026-03-01' });
  });
});
