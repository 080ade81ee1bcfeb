/** @module What a YAML mistake means, in words for the person who typed the file. */
import type { YAMLError } from 'yaml';

interface Words {
  readonly what: string;
  readonly remedy: string;
}

const indent: Words = {
  what: 'the indentation does not fit',
  remedy: 'put keys that belong together in one column, with spaces',
};

const words: Partial<Record<YAMLError['code'], Words>> = {
  BAD_INDENT: indent,
  TAB_AS_INDENT: { what: 'a tab stands where spaces belong', remedy: 'indent with spaces' },
  BAD_DQ_ESCAPE: {
    what: 'a backslash inside double quotes is followed by a letter that means nothing',
    remedy: 'use single quotes, or write the backslash twice',
  },
  BAD_SCALAR_START: {
    what: 'a value begins with a character that has a meaning of its own',
    remedy: 'put the value in quotes',
  },
  BLOCK_AS_IMPLICIT_KEY: {
    what: 'a key and its value stand where one value belongs',
    remedy: 'put the value in quotes, or begin a new line, indented',
  },
  BLOCK_IN_FLOW: {
    what: 'an indented block stands inside brackets or braces',
    remedy: 'close the bracket first, or write the whole in brackets',
  },
  MISSING_CHAR: {
    what: 'a quote, bracket, comma or colon is missing',
    remedy: 'close what was opened, and put a blank after each colon',
  },
  MULTILINE_IMPLICIT_KEY: {
    what: 'a key goes over more than one line',
    remedy: 'put the key on one line, followed by a colon and a blank',
  },
  KEY_OVER_1024_CHARS: { what: 'a key is longer than 1024 characters', remedy: 'use a short name' },
  NON_STRING_KEY: { what: 'a key is not a plain word', remedy: 'write a name, then a colon and a blank' },
  BAD_DIRECTIVE: { what: 'a line begins with a percent sign', remedy: 'delete the line' },
  UNEXPECTED_TOKEN: {
    what: 'something stands where nothing is expected',
    remedy: 'look for a quote, bracket or colon too many, here or just before',
  },
};

/** The words for a mistake that the YAML parser found. */
export const yamlWords = (code: YAMLError['code']): Words =>
  words[code] ?? {
    what: 'this cannot be read as YAML or JSON',
    remedy: 'compare it with an engine type file that is known to be good',
  };
