const titles = ['processes', 'solve', 'log', 'result', 'base'];
const percent = (part, whole) => (whole === 0 ? '-' : `${((100 * part) / whole).toFixed(1)} %`);
const cell = (text) => text.replaceAll('|', '\\|');

/** The table of a mutation run, file by file, with every change that no test noticed. */
export function mutationDocument(tasks, { seed, perFile, names }) {
  const lines = [
    '# Mutation testing',
    '',
    'One place of a file is changed (a sign, a factor, a coefficient, an index, a comparison, a condition, a term of a row), and the tests are asked whether they notice.',
    `Made by \`npm run mutate -- --per-file ${perFile} --keep${names.map((name) => ` ${name}`).join('')}\`: at most ${perFile} changes a file, drawn with seed ${seed}. "Noticed" counts all changes; "without equals" leaves out those`,
    'that no test can see, which are listed below with the reason.',
    '',
  ];
  titles.forEach((title, room) => {
    const of = tasks.filter((task) => task.room === room);
    if (of.length === 0) return;
    const killed = of.filter((task) => task.killed).length;
    const equal = of.filter((task) => task.equal).length;
    lines.push(
      `## ${title}: ${percent(killed, of.length)} noticed, ${percent(killed, of.length - equal)} without equals`,
      '',
      '| file | places to change | tried | noticed | equal | not noticed | score |',
      '| --- | ---: | ---: | ---: | ---: | ---: | ---: |',
    );
    for (const file of [...new Set(of.map((task) => task.file))]) {
      const own = of.filter((task) => task.file === file);
      const [k, e] = [own.filter((task) => task.killed).length, own.filter((task) => task.equal).length];
      const name = file.replace('packages/core/src/', '');
      lines.push(
        `| ${name} | ${own[0].of} | ${own.length} | ${k} | ${e} | ${own.length - k - e} | ${percent(k, own.length - e)} |`,
      );
    }
    lines.push(
      `| all | | ${of.length} | ${killed} | ${equal} | ${of.length - killed - equal} | ${percent(killed, of.length - equal)} |`,
      '',
    );
    const told = (heading, list, reason) => {
      if (list.length === 0) return;
      lines.push(
        `### ${heading}`,
        '',
        `| where | line | change |${reason ? ' why |' : ''}`,
        `| --- | --- | --- |${reason ? ' --- |' : ''}`,
      );
      for (const { file, source, mutant, equal: why } of list) {
        const where = `${file.replace('packages/core/src/', '')}:${mutant.line}`;
        lines.push(
          `| ${where} | \`${cell(source)}\` | \`${cell(mutant.was)}\` to \`${cell(mutant.text)}\` |${reason ? ` ${why} |` : ''}`,
        );
      }
      lines.push('');
    };
    told(
      'Not noticed',
      of.filter((task) => !task.killed && !task.equal),
      false,
    );
    told(
      'Equal',
      of.filter((task) => task.equal),
      true,
    );
  });
  return `${lines.join('\n').trimEnd()}\n`;
}
