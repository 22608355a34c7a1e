/** Collects the rows and costed variables of a dish's programme. */
import type { ClosenessPart, Food } from '../../model.ts';
import type { Dish, Section } from '../dish/dish.ts';
import type { Row, Variable } from '../solver/programme.ts';
import type { Choice } from './decisions.ts';
import { type Attribute, type Linear, linear } from './expressions.ts';

/** A variable of a plan's programme. */
export interface PlanVariable extends Variable {
  /** Pays for a wish that is missed, not for a change of the dish. */
  penalty?: boolean;
  /** The part of its cost that is trouble to the cook, not distance from the original. */
  trouble?: number;
}

/** What a row means to the user. */
export interface Meaning {
  code: string;
  text: string;
}

/** Every limit is loosened to what the original recipe already is, so the original always fits. */
export class Builder {
  readonly variables: PlanVariable[] = [];
  readonly rows: Row[] = [];
  readonly meaning = new Map<string, Meaning>();
  readonly partOf = new Map<string, ClosenessPart>();
  readonly dish: Dish;
  readonly choices: readonly Choice[];

  constructor(dish: Dish, choices: readonly Choice[]) {
    this.dish = dish;
    this.choices = choices;
  }

  variable(id: string, cost: number, part: ClosenessPart, max?: number): void {
    this.variables.push(max === undefined ? { id, cost } : { id, cost, max });
    this.partOf.set(id, part);
  }

  /** Tightens the upper bounds of variables. */
  limit(most: ReadonlyMap<string, number>): void {
    this.variables.forEach((v, at) => {
      const max = most.get(v.id);
      if (max !== undefined && max < (v.max ?? Number.POSITIVE_INFINITY))
        this.variables[at] = { ...v, max };
    });
  }

  /** A switch that lets others in, up to their most. */
  binary(
    id: string,
    cost: number,
    part: ClosenessPart,
    opens: readonly { id: string; most: number }[],
  ): void {
    this.variables.push({ id, cost, binary: true, opens });
    this.partOf.set(id, part);
    for (const open of opens) {
      const terms: [string, number][] = [
        [open.id, 1],
        [id, -open.most],
      ];
      this.row({ id: `link ${open.id}`, max: 0, terms, switch: id }, null);
    }
  }

  /** A share 0..1 of something that is trouble to the cook. */
  trouble(id: string, trouble: number): void {
    this.variables.push({ id, cost: trouble, trouble, max: 1 });
  }

  /** Each unit of `line` above `from`, or above the original, is trouble at this price. */
  dearAbove(id: string, line: Linear, from: number, price: number): void {
    if (line.terms.length === 0) return;
    this.variables.push({ id, cost: price, trouble: price });
    const max = Math.max(from, line.constant) - line.constant;
    this.row({ id: `${id} up`, max, terms: [...line.terms, [id, -1]] }, null);
  }

  /** Adds distance from the original to a variable's cost. */
  costs(id: string, cost: number, part: ClosenessPart): void {
    const at = this.variables.findIndex((v) => v.id === id);
    const variable = this.variables[at];
    if (variable) this.variables[at] = { ...variable, cost: variable.cost + cost };
    this.partOf.set(id, part);
  }

  /** How far a wish is missed, in shares of it; `price` is paid for all of it. */
  missed(id: string, price: number): void {
    this.variables.push({ id, cost: price, penalty: true });
  }

  sum(attribute: Attribute, per = 1): Linear {
    return linear(this.dish, this.choices, attribute, per);
  }

  /** `line >= bound`, or no worse than the original when that is already below. */
  floor(id: string, line: Linear, bound: number, text: string | null): void {
    this.row({ id, min: Math.min(bound, line.constant) - line.constant, terms: line.terms }, text);
  }

  /** `line <= bound`, or no worse than the original when that is already above. */
  cap(id: string, line: Linear, bound: number, text: string | null): void {
    this.row({ id, max: Math.max(bound, line.constant) - line.constant, terms: line.terms }, text);
  }

  row(row: Row, text: string | null): void {
    if (row.terms.length === 0) return;
    this.rows.push(row);
    if (text) this.meaning.set(row.id, { code: row.id.replace(/ .*/, '').toUpperCase(), text });
  }

  /** How much a section's dough counts among the doughs of the dish, 0..1. */
  weight(section: Section): number {
    const all = this.dish.sections.reduce((sum, s) => sum + s.flourBase, 0);
    return all > 0 ? section.flourBase / all : 1;
  }

  /** Words for a limit of a section, which name it when the dish has several. */
  inSection(section: Section, text: string): string {
    const { title } = section;
    if (this.dish.sections.length < 2 || title === null) return text;
    const name = title.replace(/^for the /i, '').replace(/:$/, '');
    return `${name.charAt(0).toUpperCase()}${name.slice(1)}: ${text.charAt(0).toLowerCase()}${text.slice(1)}`;
  }

  /** A costed variable for how far `line` rises above (or, `both`, strays from) its original value. */
  deviation(
    id: string,
    line: Linear,
    cost: number,
    part: ClosenessPart,
    allowed = 0,
    both = true,
  ): void {
    if (line.terms.length === 0) return;
    this.variable(id, cost, part);
    const up: [string, number][] = line.terms.map(([v, c]) => [v, c]);
    this.row({ id: `${id} up`, max: allowed, terms: [...up, [id, -1]] }, null);
    if (both) this.row({ id: `${id} down`, min: -allowed, terms: [...up, [id, 1]] }, null);
  }
}

/** An attribute that counts in one section only. */
export const within =
  (section: Section, attribute: Attribute): Attribute =>
  (c) =>
    c.section === section.id ? attribute(c) : 0;

/** An attribute that counts in the flour base of one section only. */
export const inBase = (section: Section, attribute: (food: Food) => number): Attribute =>
  within(section, (c) => (c.base ? attribute(c.food) : 0));
