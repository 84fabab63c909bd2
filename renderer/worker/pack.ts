import type { ResponseWorking } from "../../src/curve/analyse-types.ts";
import type { Fit } from "../../src/curve/fit.ts";
import { modelNamed } from "../../src/curve/models/registry.ts";

/** A fit without its model's functions, which cannot cross between threads; the name brings them back. */
type PackedFit = Omit<Fit, "model">;

export type PackedWorking = Omit<ResponseWorking, "fit" | "tied"> & {
  fit: PackedFit | null;
  tied: PackedFit[];
};

function pack({ report, problem, estimate }: Fit): PackedFit {
  return { report, problem, estimate };
}

function unpack(packed: PackedFit): Fit | null {
  const model = modelNamed(packed.report.model);
  return model ? { ...packed, model } : null;
}

export function packWorkings(workings: ResponseWorking[]): PackedWorking[] {
  return workings.map((working) => ({
    ...working,
    fit: working.fit ? pack(working.fit) : null,
    tied: working.tied.map(pack),
  }));
}

export function unpackWorkings(packed: PackedWorking[]): ResponseWorking[] {
  return packed.map((working) => ({
    ...working,
    fit: working.fit ? unpack(working.fit) : null,
    tied: working.tied.flatMap((fit) => unpack(fit) ?? []),
  }));
}
