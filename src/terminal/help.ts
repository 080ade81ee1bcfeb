/** @module The help of the program and of each command, written from what the commands say of themselves. */
import type { OptionSpec, TerminalCommand } from './command.ts';
import { everywhere } from './given.ts';
import { table } from './table.ts';

const indented = (text: string): string =>
  text
    .split('\n')
    .map((line) => (line === '' ? line : `  ${line}`))
    .join('\n');

const optionRows = (options: readonly OptionSpec[]): string =>
  options.length === 0
    ? ''
    : indented(
        // The table's head line says nothing here.
        table(
          [{ head: '' }, { head: '' }],
          options.map((option) => [
            `--${option.name}${option.value === undefined ? '' : ` ${option.value}`}`,
            option.says,
          ]),
        )
          .split('\n')
          .slice(1)
          .join('\n'),
      );

export const commandHelp = (command: TerminalCommand): string =>
  [
    `${command.summary}\n`,
    `\nUse:\n${command.usage.map((usage) => `  endfloat ${usage}\n`).join('')}`,
    command.about === undefined ? '' : `\n${command.about.trim()}\n`,
    `\nOptions:\n${optionRows([...(command.options ?? []), ...everywhere])}`,
  ].join('');

export const programHelp = (commands: readonly TerminalCommand[]): string => {
  const rows = table(
    [{ head: '' }, { head: '' }],
    commands.map((command) => [command.name, command.summary]),
  )
    .split('\n')
    .slice(1)
    .join('\n');
  return `endfloat: overhaul of small and medium diesel engines, from readings to a record that recomputes

Use:
  endfloat COMMAND …
  endfloat COMMAND --help
  endfloat --version

Commands:
${indented(rows)}
Exit code: 0 done; 1 the answer is no (errors in a file, not verified, no plan, refused by the job);
2 wrong use, or a fault of the program. Errors go to stderr and say what, where and what to do.

The maker's manual, local codes and licensed practice overrule this program.
`;
};
