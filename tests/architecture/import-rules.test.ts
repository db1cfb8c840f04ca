// Architecture: each rule of .dependency-cruiser.mjs is broken on purpose by a tree of its own name in fixtures.
import { readdirSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { cruise, type ICruiseOptions, type ICruiseResult, type IFlattenedRuleSet } from 'dependency-cruiser';
import extractConfig from 'dependency-cruiser/config-utl/extract-depcruise-config';
import { describe, expect, it } from 'vitest';

const config = await extractConfig(fileURLToPath(new URL('../../.dependency-cruiser.mjs', import.meta.url)));
const fixtures = fileURLToPath(new URL('./fixtures/', import.meta.url));
const trees = readdirSync(fixtures).sort();
const rules = (config.forbidden ?? []) as readonly { readonly name: string; readonly comment: string }[];

/** Names of the rules that a tree breaks, each once. */
async function brokenRules(tree: string): Promise<string[]> {
  const options: ICruiseOptions = {
    ...config.options,
    baseDir: `${fixtures}${tree}`,
    ruleSet: { forbidden: config.forbidden } as IFlattenedRuleSet,
    validate: true,
  };
  const { output } = await cruise(['src'], options);
  const { violations } = (output as ICruiseResult).summary;
  return [...new Set(violations.map(({ rule }) => rule.name))];
}

describe('import rules', () => {
  it('have a tree that breaks them, one each', () => {
    expect(trees).toEqual(rules.map(({ name }) => name).sort());
  });

  it('tell the offender what to do', () => {
    for (const { name, comment } of rules) expect(comment.length, name).toBeGreaterThan(40);
  });

  it.each(trees)('%s fires on its tree, and nothing else does', async (tree) => {
    expect(await brokenRules(tree)).toEqual([tree]);
  });
});
