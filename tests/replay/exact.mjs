// Exact numbers: JSON with every number as whole billionths (BigInt), and what steps of a proof compute with them.

export const BILLION = 10n ** 9n;

export class Wrong extends Error {}
export const must = (holds, what) => {
  if (!holds) throw new Wrong(what);
};

// JSON with exact numbers: each is taken from its digits, and written in digits again

const NUMBER = /^(-?)(\d+)(?:\.(\d+))?(?:[eE]([+-]?\d+))?$/;

function billionths(text) {
  const [, sign, whole, fraction = "", exponent = "0"] = NUMBER.exec(text);
  const places = Number(exponent) - fraction.length + 9;
  const digits = BigInt(whole + fraction);
  must(places >= 0 || digits % 10n ** BigInt(-places) === 0n, `${text} has more than nine decimals`);
  const size = places >= 0 ? digits * 10n ** BigInt(places) : digits / 10n ** BigInt(-places);
  return sign ? -size : size;
}

const MARK = "\0";
export const read = (text) =>
  JSON.parse(
    text.replace(/"(?:[^"\\]|\\.)*"|-?\d[\d.eE+-]*/g, (found) => (found[0] === '"' ? found : `"\\u0000${found}"`)),
    (_, value) => (typeof value === "string" && value.startsWith(MARK) ? billionths(value.slice(1)) : value),
  );

function decimal(number) {
  const [sign, size] = number < 0n ? ["-", -number] : ["", number];
  const fraction = String(size % BILLION).padStart(9, "0").replace(/0+$/, "");
  return `${sign}${size / BILLION}${fraction && "."}${fraction}`;
}

export function write(value) {
  if (typeof value === "bigint") return decimal(value);
  if (Array.isArray(value)) return `[${value.map(write).join()}]`;
  if (value === null || typeof value !== "object") return JSON.stringify(value);
  return `{${Object.entries(value).map(([name, member]) => `${JSON.stringify(name)}:${write(member)}`).join()}}`;
}

// arithmetic over whole billionths

const floorDiv = (of, by) => of / by - (of % by !== 0n && of < 0n !== by < 0n ? 1n : 0n);
export const halfAway = (of, by) => (of < 0n ? -((-of * 2n + by) / (by * 2n)) : (of * 2n + by) / (by * 2n));
const most = (values) => values.reduce((one, other) => (other > one ? other : one));
const least = (values) => values.reduce((one, other) => (other < one ? other : one));
const quotient = (of, by) => floorDiv(of * BILLION, by);
const wholeQuotient = (of, by) => (of > 0n ? of / by : 0n) * BILLION;

function roundCount(of, by, step) {
  const whole = wholeQuotient(of, by);
  const rest = of - (whole / BILLION) * by;
  return rest > 0n && quotient(rest, by) >= step ? whole + BILLION : whole;
}

function root(square) {
  if (square < 2n) return square;
  let guess = 1n << BigInt(Math.ceil(square.toString(2).length / 2));
  for (;;) {
    const better = (guess + square / guess) / 2n;
    if (better >= guess) return guess;
    guess = better;
  }
}

function percent(part, whole, limit) {
  const [share, bound] = [part * 100n * BILLION, limit * whole];
  for (let place = BILLION / 100n; place > 0n; place /= 10n) {
    const rounded = halfAway(share, whole * place) * place;
    if (rounded !== limit || share === bound) return rounded;
  }
  return share > bound ? limit + 1n : limit - 1n;
}

// billionths of the metric unit in one of the other; a cubic inch in cubic centimetres
const METRIC = {
  in: ["mm", 25_400_000_000n],
  in2: ["mm2", 645_160_000_000n],
  in3: ["cm3", 16_387_064_000n],
  lb: ["kg", 453_592_370n],
};

/** What a request says in the one system, in the other. */
export function converted(value, from, to) {
  if (METRIC[from]?.[0] === to) return halfAway(value * METRIC[from][1], BILLION);
  must(METRIC[to]?.[0] === from, `${from} is not converted to ${to}`);
  return halfAway(value * BILLION, METRIC[to][1]);
}

export const COMPUTE = {
  nothing: () => 0n,
  sum: (values) => values.reduce((total, value) => total + value, 0n),
  product: ([one, other]) => halfAway(one * other, BILLION),
  difference: ([from, take]) => from - take,
  quotient: ([of, by]) => quotient(of, by),
  whole_quotient: ([of, by]) => wholeQuotient(of, by),
  round_count: ([of, by, step]) => roundCount(of, by, step),
  percent: ([part, whole, limit = 100n * BILLION]) => percent(part, whole, limit),
  largest: most,
  smallest: least,
  distance: (legs) => root(legs.reduce((total, leg) => total + leg * leg, 0n)),
};

export { billionths, NUMBER };
