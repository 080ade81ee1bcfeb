/** @module Runs another program and waits for it. */
import { spawn } from 'node:child_process';

/**
 * Runs a program with its output kept.
 * @returns exit code (1 when a signal ended it, 127 when it could not be started) and all it printed
 */
export const runQuietly = (program, args, options = {}) =>
  new Promise((done) => {
    const child = spawn(program, args, { ...options, stdio: ['ignore', 'pipe', 'pipe'] });
    const pieces = [];
    child.stdout.on('data', (piece) => pieces.push(piece));
    child.stderr.on('data', (piece) => pieces.push(piece));
    child.on('error', (error) => done({ code: 127, output: String(error.message) }));
    child.on('close', (code) => done({ code: code ?? 1, output: Buffer.concat(pieces).toString('utf8') }));
  });

const parent = process.ppid;

/** npm ends the shell that it started this script with, but tells the script nothing. */
const orphaned = () => process.env.npm_lifecycle_event !== undefined && process.ppid !== parent;

/**
 * Runs a program on this terminal. An interrupt from the keyboard reaches it directly; one sent to this
 * script alone is passed on, so that nothing is left running.
 * @returns its exit code; 0 when it was the interrupt that ended it
 */
export const runHere = (program, args, options = {}) =>
  new Promise((done) => {
    const child = spawn(program, args, { ...options, stdio: 'inherit' });
    let interrupted = false;
    const passOn = (signal) => {
      if (interrupted && signal === 'SIGINT') child.kill('SIGKILL');
      interrupted = true;
      if (signal !== 'SIGINT' || !process.stdin.isTTY) child.kill(signal);
    };
    const signals = ['SIGINT', 'SIGTERM', 'SIGHUP'];
    const watch = setInterval(() => orphaned() && passOn('SIGTERM'), 500);
    for (const signal of signals) process.on(signal, passOn);
    const end = (code) => {
      clearInterval(watch);
      for (const signal of signals) process.off(signal, passOn);
      done({ code: interrupted ? 0 : code, interrupted });
    };
    child.on('error', (error) => {
      console.error(error.message);
      end(127);
    });
    child.on('close', (code) => end(code ?? 1));
  });
