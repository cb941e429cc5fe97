import { existsSync, mkdirSync, readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { dirname, join, resolve } from 'node:path';

/** A browser to start: its program and the environment it needs. */
export interface BrowserProgram {
  readonly executablePath: string;
  readonly env: NodeJS.ProcessEnv;
}

/** Software rendering, so that a machine without a graphics card shows the same picture; no traffic of the browser's own. */
export const BROWSER_FLAGS: readonly string[] = [
  '--no-sandbox',
  '--use-angle=swiftshader',
  '--enable-unsafe-swiftshader',
  '--ignore-gpu-blocklist',
  '--disable-background-networking',
  '--disable-component-update',
  '--no-first-run',
];

/**
 * The browser the tests use: the one in node_modules (Linux on x64), or the one FETTLE_BROWSER names on other desks.
 * Unpacked once into node_modules/.cache, beside its final place and then renamed, so that no run meets half a browser.
 */
export async function browserProgram(): Promise<BrowserProgram> {
  const own = process.env.FETTLE_BROWSER;
  if (own !== undefined) {
    if (!existsSync(own)) throw new Error(`FETTLE_BROWSER: there is no browser at ${own}`);
    return { executablePath: own, env: process.env };
  }
  // The package hides its package.json, so its folder follows from its entry.
  const packageFolder = resolve(
    dirname(createRequire(import.meta.url).resolve('@sparticuz/chromium')),
    '../..',
  );
  const { version } = JSON.parse(readFileSync(join(packageFolder, 'package.json'), 'utf8')) as {
    version: string;
  };
  const folder = resolve(packageFolder, '../../.cache/npm-chromium', version);
  if (!existsSync(folder)) await unpack(folder);

  // Its own list of font folders does not fit here, and without any font the browser ends on its first page.
  const fonts = join(folder, 'fonts.conf');
  return {
    executablePath: join(folder, 'chromium'),
    env: { ...process.env, LD_LIBRARY_PATH: join(folder, 'al2023/lib'), FONTCONFIG_FILE: fonts },
  };
}

async function unpack(folder: string): Promise<void> {
  const beside = `${folder}.${process.pid}`;
  mkdirSync(beside, { recursive: true });
  // It unpacks into the temporary folder, with its libraries only when it takes this for a cloud machine.
  const before = { ...process.env };
  process.env.TMPDIR = beside;
  process.env.AWS_LAMBDA_JS_RUNTIME = 'nodejs20.x';
  try {
    const { default: chromium } = await import('@sparticuz/chromium');
    await chromium.executablePath();
  } finally {
    for (const name of Object.keys(process.env)) if (!(name in before)) delete process.env[name];
    Object.assign(process.env, before);
  }
  writeFileSync(
    join(beside, 'fonts.conf'),
    `<?xml version="1.0"?><!DOCTYPE fontconfig SYSTEM "fonts.dtd"><fontconfig><dir>${folder}/fonts</dir><cachedir>${folder}/font-cache</cachedir></fontconfig>\n`,
  );
  try {
    renameSync(beside, folder);
  } catch (error) {
    // Another run was first: its copy serves as well.
    rmSync(beside, { recursive: true, force: true });
    if (!existsSync(folder)) throw error;
  }
}
