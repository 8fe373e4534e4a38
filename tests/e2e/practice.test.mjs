// Practice: alone, for a group, on paper; and that no answer is anywhere before it's given.

import assert from 'node:assert/strict';
import { readFile } from 'node:fs/promises';

import { assertAccessible } from './accessibility.mjs';
import { pageUrl } from './chromium.mjs';
import { flow } from './flow.mjs';
import { byKeys } from './keys.mjs';
import { FarendPage } from './page.mjs';
import { keepPicture } from './paper.mjs';
import { everything, plain, Practising } from './practising.mjs';

const KINDS = ['route', 'amount', 'limit', 'sheet', 'fit', 'wanted'];

/** A second reader in a browser profile of their own. */
async function another(page, url = pageUrl) {
  const context = await page.tab.context().browser().newContext();
  context.setDefaultTimeout(10_000);
  const other = new FarendPage(await context.newPage());
  await other.open(url);
  return { page: other, practising: new Practising(other), close: () => context.close() };
}

/** Waits until the focus is where it should be: it follows the next drawing of the page. */
const focused = (page, id) => page.until((id) => document.activeElement?.id === id, id);

const lines = (texts) => texts.map(plain).map((it) => it.trim()).filter((it) => it !== '');

/** What only those may know who have answered a case: from its outcome, and from the pair itself. */
async function secrets({ page, practising }, kind, seed) {
  await practising.open('alone');
  await practising.find(kind, seed);
  await practising.giveUp();
  const known = [];
  const cells = (id, column) => page.part(id).locator(`td[data-label="${column}"]`).allInnerTexts();
  if (kind === 'wanted') known.push(...(await cells('truth-changes', 'Arrives')));
  if (kind === 'sheet' || kind === 'fit') known.push(...(await page.part('outcome').locator('.list li').allInnerTexts()));
  if (kind === 'amount') known.push(/^[\d.,]+ kW/.exec(plain(await page.text('truth')))[0]);
  await page.part('look').click();
  await page.part('answer').waitFor();
  if (kind === 'route') {
    for (const row of await page.tab.locator('.bars .row[data-testid]').all()) {
      if (await row.getByTestId('delivered').count()) known.push(await row.getByTestId('delivered').innerText());
    }
    known.push(await page.text('answer'));
  }
  if (kind === 'amount') known.push(await page.delivered(await page.openedRoute()));
  if (kind === 'limit') known.push((await page.text('verdict')).split(/\. (?=[A-Z])/).at(-1));
  if (kind === 'fit') {
    await page.unfold('fit');
    known.push(...(await page.part('fit-items').locator('li > span:last-child').allInnerTexts()));
  }
  assert.ok(known.length > 0, kind);
  return lines(known);
}

for (const [kind, seed] of KINDS.map((kind, place) => [kind, 300 + place])) {
  flow(`no answer is anywhere before it is given: ${kind}`, {}, async (page) => {
    const practising = new Practising(page);
    await practising.open('alone');
    await practising.find(kind, seed);
    const other = await another(page);
    const known = await secrets(other, kind, seed);
    await other.close();
    // An example of another pair may have the same figures by chance: it goes first.
    if (await page.part('know-this').count()) await page.part('know-this').click();
    await page.part('example').waitFor({ state: 'detached' });
    const before = await everything(page);
    for (const secret of known) assert.ok(!before.includes(secret), `${kind}: ${secret}`);
    // No choice is marked: all are written alike.
    const choices = await page.part('answer-form').locator('.picks label').evaluateAll((all) =>
      all.map((it) => it.outerHTML.replace(/choice-\d/g, '').replace(/<span>.*<\/span>/s, '')));
    assert.equal(new Set(choices).size, choices.length ? 1 : 0);
    // And the search finds them where they are.
    await practising.giveUp();
    if (kind !== 'fit' && kind !== 'route') {
      const after = await everything(page);
      assert.ok(known.some((secret) => after.includes(secret)), `${kind}: ${known}`);
    }
  });
}

flow('before a group no answer is anywhere until it is revealed', {}, async (page) => {
  const practising = new Practising(page);
  await practising.open('group');
  for (const kind of KINDS.slice(0, 1).concat(KINDS.slice(2))) await page.part(`set-${kind}`).uncheck();
  await page.part('show-large').click();
  const number = /Case (\d+)/.exec(await page.text('show'))[1];
  const other = await another(page);
  const known = await secrets(other, 'amount', number);
  await other.close();
  const before = await everything(page);
  for (const secret of known) assert.ok(!before.includes(secret), secret);
  await page.part('reveal').click();
  await page.part('show-answer').waitFor();
  assert.ok((await everything(page)).includes(known[0]));
});

flow('wrong guesses bring more help, right ones less', {}, async (page) => {
  const practising = new Practising(page);
  const other = await another(page);
  await other.practising.open('alone');
  await practising.open('alone');
  let seed = 500;
  const next = async (right) => {
    seed += 1;
    const place = await other.practising.rightChoice('fit', seed);
    await practising.find('fit', seed);
    const help = await practising.help();
    const said = right ? place : (place + 1) % (await practising.choices());
    assert.equal(await practising.answer(said), right);
    return help;
  };
  const helps = [];
  for (const right of [true, true, true, true, false, false, false]) helps.push(await next(right));
  assert.deepEqual(helps, ['shown', 'shown', 'first_blank', 'first_blank', 'all_blank', 'first_blank', 'shown']);
  await practising.find('fit', 600);
  assert.equal(await practising.help(), 'shown');
  assert.ok((await page.text('example')).length > 100);
  await other.close();
});

flow('the first step of an example is left to the learner, and shown when asked for', {}, async (page) => {
  const practising = new Practising(page);
  const other = await another(page);
  await other.practising.open('alone');
  await practising.open('alone');
  for (const seed of [701, 702]) {
    const place = await other.practising.rightChoice('sheet', seed);
    await practising.find('sheet', seed);
    await practising.answer(place);
  }
  await practising.find('sheet', 703);
  assert.equal(await practising.help(), 'first_blank');
  const first = page.part('example').locator('.worked-steps li').first();
  assert.match(await first.innerText(), /yours/);
  await page.part('show-first').click();
  await page.part('show-first').waitFor({ state: 'detached' });
  assert.doesNotMatch(await first.innerText(), /yours/);
  await focused(page, 'practice-example');
  await other.close();
});

flow('who knows it goes on without help', {}, async (page) => {
  const practising = new Practising(page);
  const other = await another(page);
  await other.practising.open('alone');
  const place = await other.practising.rightChoice('fit', 801);
  await practising.open('alone');
  await practising.find('fit', 801);
  assert.equal(await practising.help(), 'shown');
  await page.part('know-this').click();
  await page.part('example').waitFor({ state: 'detached' });
  assert.equal(await practising.help(), 'all_blank');
  await practising.answer(place);
  await practising.find('fit', 802);
  assert.equal(await practising.help(), 'all_blank');
  assert.equal(await page.part('example').count(), 0);
  await other.close();
});

flow('a misconception is answered by name', {}, async (page) => {
  const practising = new Practising(page);
  await practising.open('alone');
  // Somebody who thinks that the engine's power arrives says so, case after case.
  const named = new Set();
  for (let seed = 1; seed <= 12; seed += 1) {
    await practising.find('amount', seed);
    const facts = plain(await page.part('case').locator('.facts').first().innerText());
    const [, engine] = /([\d.,]+) kW net/.exec(facts);
    await page.part('guess-power').fill(engine);
    await page.part('guess-power').press('Enter');
    await practising.sure();
    await practising.commit();
    if (await page.part('misconception').count()) {
      named.add(await page.part('misconception').getAttribute('data-idea'));
      assert.ok((await page.text('misconception')).length > 80);
    }
  }
  assert.ok(named.has('engine_as_hydraulic'), [...named].join());
});

flow('an answer is taken only with a guess and how sure one is', {}, async (page) => {
  const practising = new Practising(page);
  await practising.open('alone');
  await practising.find('limit', 900);
  await page.part('commit').click();
  await page.part('practice-told').getByText('a guess will do').waitFor();
  await practising.choose(0);
  await page.part('commit').click();
  await page.part('practice-told').getByText('how sure').waitFor();
  assert.equal(await page.part('outcome').count(), 0);
  await practising.sure('fairly');
  await practising.commit();
  await focused(page, 'practice-result');
  assert.match(await page.text('outcome'), /You said/);
});

flow('the same number is the same case', {}, async (page) => {
  const practising = new Practising(page);
  await practising.open('alone');
  await practising.find('amount', 1234);
  const first = await page.text('case');
  await practising.find('amount', 1235);
  assert.notEqual(await page.text('case'), first);
  await practising.find('amount', 1234);
  assert.equal(await page.text('case'), first);
});

flow('every route tells why it stands where it does', {}, async (page) => {
  const practising = new Practising(page);
  await practising.open('alone');
  let apart = 0;
  for (let seed = 20; seed < 30; seed += 1) {
    await practising.find('route', seed);
    await practising.giveUp();
    const rows = page.part('truth-routes').locator('tbody tr');
    for (const row of await rows.all()) assert.ok((await row.locator('td').last().innerText()).length > 10, String(seed));
    apart += await rows.filter({ has: page.tab.getByRole('rowheader', { name: /^no fit/ }) }).count();
  }
  assert.ok(apart > 0);
});

flow('a case goes on to the pair as it is set there, and comes back', {}, async (page) => {
  const practising = new Practising(page);
  await practising.open('alone');
  const speeds = new Set();
  for (const seed of [41, 42, 43, 44, 45]) {
    await practising.find('limit', seed);
    await practising.giveUp();
    const outcome = await page.text('outcome');
    const facts = await page.part('case').locator('.facts').first().innerText();
    const [, speed] = /runs at ([\d,]+)/.exec(facts);
    await page.part('look').click();
    await page.part('answer').waitFor();
    const chosen = (choice) => choice.locator('option:checked').innerText();
    const pair = [await chosen(page.machine()), await chosen(page.implement())];
    assert.equal(await page.control('enginespeed').value(), speed.replaceAll(',', ''));
    const own = await page.part('enginespeed').locator('.own').innerText();
    speeds.add(own.startsWith('Back'));
    await page.part('view-practice').click();
    assert.equal(await page.text('outcome'), outcome);
    const said = await page.text('case-pair');
    for (const name of pair) assert.ok(said.includes(name.split(',')[0]), `${said}: ${name}`);
  }
  // Cases as the yard has them, and cases in which the engine's speed is another.
  assert.equal(speeds.size, 2);
});

// For a group

flow('a set made here opens there with the same cases, by link and by file', {}, async (page) => {
  const practising = new Practising(page);
  await practising.open('group');
  const before = page.link();
  await page.part('set-count').fill('4');
  await page.part('set-count').press('Enter');
  await page.part('set-seed').fill('4711');
  await page.part('set-seed').press('Enter');
  await page.part('set-fit').uncheck();
  const link = await page.linkAfter(before);
  const cases = await practising.shownLarge();
  assert.equal(cases.length, 4);
  await page.linkAfter('');
  const download = page.tab.waitForEvent('download');
  await page.part('save-set').click();
  const file = await readFile(await (await download).path(), 'utf8');
  assert.ok(file.includes('"seed": 4711'), file);

  const byLink = await another(page, pageUrl + page.link());
  assert.ok(link.length > 0);
  // A learner begins with the first case at once.
  assert.match(await byLink.page.text('case'), /Case 1 of 4 of the set/);
  await byLink.practising.open('group');
  assert.deepEqual(await byLink.practising.shownLarge(), cases);
  await byLink.close();

  const byFile = await another(page);
  await byFile.practising.open('group');
  await byFile.page.part('open-set').setInputFiles({ name: 'set.json', mimeType: 'application/json', buffer: Buffer.from(file) });
  await byFile.page.part('group-told').getByText('The set is open').waitFor();
  assert.deepEqual(await byFile.practising.shownLarge(), cases);
  const other = file.replace(/"yard": ".*"/, '"yard": "Elsewhere"');
  await byFile.page.part('open-set').setInputFiles({ name: 'set.json', mimeType: 'application/json', buffer: Buffer.from(other) });
  await byFile.page.part('group-told').getByText('Another yard').waitFor();
  await byFile.page.part('open-set').setInputFiles({ name: 'set.json', mimeType: 'application/json', buffer: Buffer.from('{ "seed": -1 }') });
  await byFile.page.part('set-faults').getByText('seed').waitFor();
  assert.ok((await byFile.page.part('set-faults').locator('li').count()) > 3);
  await byFile.close();
});

flow('a learner goes through a set to its end', {}, async (page) => {
  const practising = new Practising(page);
  await practising.open('group');
  await page.part('set-count').fill('2');
  await page.part('set-count').press('Enter');
  await page.part('practice-alone').click();
  await page.part('begin-set').click();
  await practising.giveUp();
  await page.part('next-in-set').click();
  await page.part('case').getByText('Case 2 of 2').waitFor();
  await practising.giveUp();
  await page.part('outcome').getByText('last case of the set').waitFor();
});

flow('a group’s voices are counted and kept apart for each case', {}, async (page) => {
  const practising = new Practising(page);
  await practising.open('group');
  await page.part('set-amount').uncheck();
  await page.part('show-large').click();
  const voices = page.part('voices-1');
  for (let voice = 0; voice < 3; voice += 1) await voices.getByTestId('more').click();
  await voices.getByTestId('less').click();
  assert.match(await voices.getByTestId('count').innerText(), /^2/);
  await page.part('show-next').click();
  await page.part('voices-1').getByTestId('count').getByText('0').waitFor();
  await page.part('show-before').click();
  await page.part('show-place').getByText('1 of').waitFor();
  assert.equal(await page.tab.locator('.voices .right').count(), 0);
  await page.part('reveal').click();
  assert.equal(await page.tab.locator('.voices .right').count(), 1);
});

flow('a group’s powers make a spread', {}, async (page) => {
  const practising = new Practising(page);
  await practising.open('group');
  for (const kind of KINDS.filter((it) => it !== 'amount')) await page.part(`set-${kind}`).uncheck();
  await page.part('show-large').click();
  for (const power of ['10', '30', '12']) {
    await page.part('group-power').fill(power);
    await page.part('group-power').press('Enter');
    await page.until(() => document.querySelector('[data-testid="group-power"]').value === '');
  }
  assert.match(plain(await page.text('group-spread')), /3 voices: 10.0 to 30.0 kW; .* 12.0 kW/);
  await page.part('group-powers').getByRole('button').nth(1).click();
  await page.part('group-spread').getByText('2 voices').waitFor();
  // The last kind stays: a set without any would be none.
  await page.part('show-close').click();
  await page.part('set-amount').click();
  await page.part('group-told').getByText('one kind').waitFor();
  assert.ok(await page.part('set-amount').isChecked());
});

flow('before a group everything is a twentieth of the screen’s height', { viewport: { width: 1920, height: 1080 } }, async (page) => {
  const practising = new Practising(page);
  await practising.open('group');
  for (const kind of KINDS) {
    for (const other of KINDS) await page.part(`set-${other}`).setChecked(true);
    for (const other of KINDS.filter((it) => it !== kind)) await page.part(`set-${other}`).uncheck();
    await page.part('show-large').click();
    await page.tab.locator('[data-large="true"]').waitFor();
    const sizes = await page.tab.locator('[data-large]').evaluate((it) => {
      const read = it.querySelectorAll('.pair, h2, dt, dd, .voices span:not(.hidden), .voices b, .entry input, [data-testid="group-spread"]');
      return [...read].map((one) => parseFloat(getComputedStyle(one).fontSize));
    });
    assert.ok(sizes.length > 6, kind);
    assert.ok(Math.min(...sizes) >= 54, `${kind}: ${sizes}`);
    await keepPicture(page, `practice-large-${kind}`);
    await page.tab.keyboard.press('Escape');
    await focused(page, 'show-large');
  }
});

// On paper

/** Prints by a button, without the system's dialog: what the document then holds. */
async function printed(page, id) {
  await page.tab.evaluate(() => {
    globalThis.print = () => dispatchEvent(new Event('beforeprint'));
  });
  await page.part(id).click();
  const paper = page.part('practice-paper');
  await paper.waitFor({ state: 'attached' });
  await page.tab.emulateMedia({ media: 'print' });
  assert.equal(await paper.count(), 1);
  assert.ok(await paper.isVisible());
  assert.ok(!(await page.part('set-count').isVisible()));
  const text = plain(await paper.innerText());
  await page.tab.pdf({ format: 'A4', ...(process.env.FAREND_SHOTS ? { path: `${process.env.FAREND_SHOTS}/${id}.pdf` } : {}) });
  await page.tab.emulateMedia({ media: null });
  await page.tab.evaluate(() => dispatchEvent(new Event('afterprint')));
  await paper.waitFor({ state: 'detached' });
  return text;
}

flow('a set is printed without answers, or with them', {}, async (page) => {
  const practising = new Practising(page);
  await practising.open('group');
  for (const kind of KINDS.filter((it) => it !== 'amount')) await page.part(`set-${kind}`).uncheck();
  await page.part('set-count').fill('2');
  await page.part('set-count').press('Enter');
  const without = await printed(page, 'print-sheet');
  const withThem = await printed(page, 'print-answers');
  const number = /Case (\d+)/.exec(without)[1];
  const other = await another(page);
  const known = await secrets(other, 'amount', number);
  await other.close();
  for (const secret of known) assert.ok(!without.includes(secret), secret);
  assert.ok(withThem.includes(known[0]), withThem);
  assert.doesNotMatch(without, /Answer:/);
  assert.match(withThem, /Answer:/);
});

// The record

const record = (page) => page.tab.evaluate(() => localStorage.getItem('farend-practice-record'));

flow('the record survives a reload, is saved and is erased when asked twice', {}, async (page) => {
  const practising = new Practising(page);
  await practising.open('alone');
  await practising.find('sheet', 12);
  await practising.giveUp();
  const idea = page.part('idea-figures_belong_together');
  await page.part('practice-record').click();
  assert.match(await idea.innerText(), /1 case/);
  await page.linkAfter('');
  await page.tab.reload();
  await practising.open('record');
  assert.match(await idea.innerText(), /1 case/);
  const download = page.tab.waitForEvent('download');
  await page.part('export-record').click();
  const file = JSON.parse(await readFile(await (await download).path(), 'utf8'));
  assert.equal(file.format, 'farend-practice-record');
  assert.equal(file.answers.length, 1);
  assert.equal(file.answers[0].idea, 'figures_belong_together');
  await page.part('erase-record').click();
  await page.part('erase-no').click();
  assert.ok((await record(page)) !== null);
  await page.part('erase-record').click();
  await focused(page, 'erase-question');
  await page.part('erase-yes').click();
  await idea.getByText('not met yet').waitFor();
  assert.equal(await record(page), null);
});

flow('two tabs keep each other’s answers', {}, async (page) => {
  const practising = new Practising(page);
  await practising.open('alone');
  const tab = await page.tab.context().newPage();
  const second = new FarendPage(tab);
  await second.open(pageUrl);
  const there = new Practising(second);
  await there.open('alone');
  for (const [one, seed] of [[practising, 1], [there, 2], [practising, 3]]) {
    await one.find('fit', seed);
    await one.giveUp();
  }
  assert.equal(JSON.parse(await record(page)).answers.length, 3);
  await there.open('record');
  await second.part('idea-it_must_hook_up').getByText('3 cases').waitFor();
});

for (const [what, script, told] of [
  ['a closed store', "Object.defineProperty(window, 'localStorage', { get() { throw new DOMException('no', 'SecurityError'); } });", /anything here/],
  ['a full store', "Storage.prototype.setItem = () => { throw new DOMException('full', 'QuotaExceededError'); };", /no room/],
  ['a damaged record', "if (!localStorage.getItem('farend-practice-record')) localStorage.setItem('farend-practice-record', '{');", /can't be read/],
  ['a newer record', "if (!localStorage.getItem('farend-practice-record')) localStorage.setItem('farend-practice-record', JSON.stringify({ format_version: 2 }));", /newer version/],
]) {
  flow(`${what} is told, and practice goes on`, {}, async (page) => {
    await page.tab.addInitScript(script);
    await page.tab.reload();
    await page.heading().waitFor();
    const kept = await page.tab.evaluate(() => { try { return localStorage.getItem('farend-practice-record'); } catch { return null; } });
    const practising = new Practising(page);
    await practising.open('alone');
    for (const seed of [1, 2]) {
      await practising.find('fit', seed);
      await practising.giveUp();
    }
    await page.part('practice-record').click();
    assert.match(await page.text('record-trouble'), told);
    assert.match(await page.text('idea-it_must_hook_up'), /2 cases/);
    const after = await page.tab.evaluate(() => { try { return localStorage.getItem('farend-practice-record'); } catch { return null; } });
    assert.equal(after, kept);
  });
}

// The way through one pair

const walkOn = async (page, say) => {
  const stages = [];
  while (await page.part('walk-step').count()) {
    const stage = await page.part('walk-step').getAttribute('data-stage');
    stages.push(stage);
    if (say) {
      await page.part('walk-power').fill('0');
      await page.part('walk-power').press('Enter');
      await page.part('walk-say').click();
      await page.part('walk-result').waitFor();
    }
    const title = await page.tab.locator('#walk-open').innerText();
    await page.part('walk-forward').click();
    await page.until((before) => document.querySelector('#walk-open').innerText !== before, title);
  }
  return stages;
};

flow('the power is followed stage by stage, a guess first, to three ideas', {}, async (page) => {
  await new Practising(page).open('walk');
  const takes = await page.text('walk-takes');
  assert.equal(await page.part('walk-result').count(), 0);
  await page.part('walk-say').click();
  await page.part('walk-told').getByText('a guess will do').waitFor();
  await page.part('walk-slider').fill('80');
  await page.part('walk-say').click();
  await page.part('walk-result').waitFor();
  await focused(page, 'walk-result');
  const told = await page.text('walk-result');
  assert.match(told, /You said .* It passes on .* and loses/);
  // Any figure can be turned, and the truth follows.
  await page.part('enginespeed').getByTestId('less').click();
  assert.notEqual(await page.text('walk-result'), told);
  assert.notEqual(await page.text('walk-takes'), takes);
  const stages = await walkOn(page, false);
  assert.ok(stages.includes('Gear(PtoTrain)') && stages.includes('Motor'), stages.join());
  assert.equal(await page.part('three-ideas').locator('li').count(), 3);
  await page.part('walk-back').click();
  await page.part('walk-step').waitFor();
  await page.part('walk-restart').click();
  assert.equal(await page.part('walk-step').getAttribute('data-stage'), stages[0]);
  assert.equal(await page.part('walk-result').count(), 0);
  assert.ok(await page.part('walk-back').isDisabled());
});

flow('what a stage passes on is nowhere before the guess', {}, async (page) => {
  const other = await another(page);
  await other.page.openRoute('rear_shaft');
  const rows = await other.page.part('ledger').locator('td[data-head="Loses"]').allInnerTexts();
  await other.close();
  await new Practising(page).open('walk');
  const lost = lines(rows)[0];
  assert.match(lost, /kW/);
  assert.ok(!(await everything(page)).includes(`loses ${lost}`));
  await page.part('walk-more').click();
  await page.part('walk-say').click();
  await page.part('walk-result').waitFor();
  assert.ok((await everything(page)).includes(`loses ${lost}`), lost);
});

// Without a mouse

flow('a case is answered by keys alone', {}, async (page) => {
  await byKeys.press(page, 'view-practice');
  await byKeys.press(page, 'practice-alone');
  await byKeys.unfold(page, 'find');
  await byKeys.choose(page, 'find-kind', 'What would');
  await byKeys.type(page, 'find-number', '5');
  await byKeys.press(page, 'find-case');
  await page.part('choices').waitFor();
  await focused(page, 'practice-case');
  await byKeys.pick(page, 'choices', 'choice-1');
  await byKeys.pick(page, 'sure-of-it', 'fairly');
  await byKeys.press(page, 'commit');
  await page.part('outcome').waitFor();
  await focused(page, 'practice-result');
  await byKeys.press(page, 'next-same');
  await page.part('answer-form').waitFor();
  await focused(page, 'practice-case');
});

flow('routes are put in order by keys alone', {}, async (page) => {
  const practising = new Practising(page);
  await practising.open('alone');
  await practising.find('route', 3);
  const order = () => page.part('order').locator('li').evaluateAll((all) => all.map((it) => it.dataset.testid.replace('order-', '')));
  const [first, second, ...rest] = await order();
  await byKeys.press(page, `down-${first}`);
  assert.deepEqual(await order(), [second, first, ...rest]);
  await page.part('practice-told').getByText('place 2').waitFor();
  await page.until(
    (route) => ['up', 'down'].some((way) => document.activeElement?.id === `${way}-${route}`), first);
  await byKeys.press(page, `cant-${first}`);
  assert.deepEqual(await order(), [second, ...rest]);
  await focused(page, `can-${first}`);
  await page.tab.keyboard.press('Enter');
  assert.deepEqual(await order(), [second, ...rest, first]);
});

// For everybody

flow('every part breaks no accessibility rule', {}, async (page) => {
  const practising = new Practising(page);
  await practising.open('walk');
  await assertAccessible(page);
  await page.part('walk-more').click();
  await page.part('walk-say').click();
  await page.part('walk-others').locator('summary').click();
  await assertAccessible(page);
  await walkOn(page, false);
  await assertAccessible(page);
  await practising.open('record');
  await page.part('erase-record').click();
  await assertAccessible(page);
});

flow('cases of every kind and their outcomes break no accessibility rule', {}, async (page) => {
  const practising = new Practising(page);
  await practising.open('alone');
  for (const kind of KINDS) {
    await practising.find(kind, 20);
    await page.part('example').waitFor();
    await assertAccessible(page);
    await practising.giveUp();
    await assertAccessible(page);
    await keepPicture(page, `practice-outcome-${kind}`);
  }
});

flow('what a group sees breaks no accessibility rule', {}, async (page) => {
  const practising = new Practising(page);
  await practising.open('group');
  await assertAccessible(page);
  await page.part('show-large').click();
  for (let more = true; more; ) {
    await assertAccessible(page);
    await page.part('reveal').click();
    await page.part('show-answer').waitFor();
    await assertAccessible(page);
    more = await page.part('show-next').isEnabled();
    if (more) await page.part('show-next').click();
  }
});

for (const width of [320, 390, 1024, 1920]) {
  const viewport = { width, height: width < 1000 ? 844 : 1080 };
  flow(`practice fits ${width} px, and its targets are large`, { viewport }, async (page) => {
    const practising = new Practising(page);
    const fits = async (name) => {
      const [inner, scroll] = await page.tab.evaluate(() => [innerWidth, document.documentElement.scrollWidth]);
      assert.ok(scroll <= inner, `${name}: ${scroll} > ${inner}`);
      const small = await page.tab.locator('.practice').evaluate((it) =>
        [...it.querySelectorAll('button, select, summary, input[type="text"], .switch label, .unfold')]
          .filter((one) => one.offsetParent !== null)
          .map((one) => [one.dataset.testid ?? one.innerText, one.getBoundingClientRect()])
          .filter(([, box]) => box.height < 47.9 || box.width < 47.9)
          .map(([id, box]) => `${id} ${box.width}x${box.height}`));
      assert.deepEqual(small, [], name);
      await keepPicture(page, `practice-${width}-${name}`);
    };
    await practising.open('walk');
    await fits('walk');
    await page.part('walk-more').click();
    await page.part('walk-say').click();
    await page.part('walk-result').waitFor();
    await fits('walk-told');
    await practising.open('alone');
    await fits('alone');
    for (const kind of KINDS) {
      await practising.find(kind, 20);
      await fits(kind);
      await practising.giveUp();
      await fits(`${kind}-outcome`);
    }
    await practising.open('record');
    await fits('record');
    await practising.open('group');
    await fits('group');
    await page.part('show-large').click();
    await page.part('reveal').click();
    await page.part('show-answer').waitFor();
    await fits('large');
  });
}
