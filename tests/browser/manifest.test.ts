import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeAll, describe, expect, it } from 'vitest';
import { buildBoth } from './drive/build.ts';
import { CHROMIUM_BUILD, FIREFOX_BUILD } from './drive/places.ts';

interface Manifest {
  manifest_version: number;
  permissions: string[];
  optional_host_permissions: string[];
  default_locale: string;
  incognito: string;
  icons: Record<string, string>;
  content_security_policy: { extension_pages: string };
  browser_specific_settings?: {
    gecko: { data_collection_permissions: { required: string[] } };
  };
}

beforeAll(buildBoth);

describe.each([
  ['Chromium', CHROMIUM_BUILD],
  ['Firefox', FIREFOX_BUILD],
])('the %s build', (_, folder) => {
  const manifest = (): Manifest => JSON.parse(readFileSync(join(folder, 'manifest.json'), 'utf8'));

  it('asks for no site and nothing that warns', () => {
    expect(manifest().manifest_version).toBe(3);
    expect([...manifest().permissions].sort()).toEqual([
      'activeTab',
      'contextMenus',
      'scripting',
      'storage',
      'unlimitedStorage',
    ]);
    for (const key of [
      'host_permissions',
      'optional_permissions',
      'content_scripts',
      'externally_connectable',
      'web_accessible_resources',
    ]) {
      expect(manifest()).not.toHaveProperty(key);
    }
    // What the option to mark pages may ask for later, and nothing beside it.
    expect(manifest().optional_host_permissions).toEqual(['*://*/*']);
  });

  it('stays out of private windows', () => {
    expect(manifest().incognito).toBe('not_allowed');
  });

  it('forbids every connection, foreign code and markup from text', () => {
    const rules = new Map(
      manifest()
        .content_security_policy.extension_pages.split(';')
        .map((rule) => rule.trim().split(/\s+(.*)/))
        .map(([name, value]) => [name, value]),
    );
    expect(rules.get('default-src')).toBe("'none'");
    expect(rules.get('connect-src')).toBe("'none'");
    expect(rules.get('script-src')).toBe("'self'");
    expect(rules.get('style-src')).toBe("'self'");
    expect(rules.get('form-action')).toBe("'none'");
    expect(rules.get('require-trusted-types-for')).toBe("'script'");
    expect(rules.get('trusted-types')).toBe('solver');
  });

  it('has its texts and pictures', () => {
    const { default_locale, icons } = manifest();
    const messages = join(folder, '_locales', default_locale, 'messages.json');
    const { extensionName, extensionDescription } = JSON.parse(readFileSync(messages, 'utf8'));
    expect(extensionName.message).toBe('Crumbshift');
    expect(extensionDescription.message.length).toBeLessThanOrEqual(132);
    for (const size of ['16', '32', '48', '128']) {
      expect(existsSync(join(folder, icons[size] ?? 'missing'))).toBe(true);
    }
  });

  it('keeps the checking library out of the reader, which runs in pages', () => {
    const reader = readFileSync(join(folder, 'reader.js'), 'utf8');
    expect(reader).not.toMatch(/ZodError|safeParse/);
    expect(reader.length).toBeLessThan(200_000);
  });

  it('holds no address to fetch', () => {
    const pages = readdirSync(folder).filter((name) => name.endsWith('.html'));
    expect(pages.sort()).toEqual(['bench.html', 'options.html', 'popup.html']);
    for (const name of pages) {
      expect(readFileSync(join(folder, name), 'utf8')).not.toMatch(
        /https?:|preconnect|dns-prefetch/,
      );
    }
  });
});

it('Firefox is told that no data is collected', () => {
  const manifest: Manifest = JSON.parse(readFileSync(join(FIREFOX_BUILD, 'manifest.json'), 'utf8'));
  expect(manifest.browser_specific_settings?.gecko.data_collection_permissions.required).toEqual([
    'none',
  ]);
});
