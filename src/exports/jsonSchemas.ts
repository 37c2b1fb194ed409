/**
 * The published JSON Schemas (2020-12), made from the zod schemas. What zod checks by code it cannot put into a schema, so
 * the two such checks, sizes that are sold and readings over range, are added here.
 */
import { z } from "zod"
import { sizesMm2 } from "../facts/Quantity"
import { JobFileHead, JobFileRow, JobFileTail } from "../record/jobFile"
import { LogLine } from "../record/LogLine"
import { ExportedRecord } from "./ExportedRecord"

const hash = z.string().regex(/^[0-9a-f]{64}$/)

/** Any one line of a job file, held to more than the reader asks, which has to save what it can. */
const JobFileLine = z.union([
  JobFileHead,
  JobFileRow.extend({ line: LogLine, hash }),
  JobFileTail.extend({ end: JobFileTail.shape.end.extend({ lines: z.number().int().nonnegative(), hash }) }),
])

type Schema = z.core.JSONSchema.BaseSchema

const propertyOf = (schema: Schema, name: string) => schema.properties?.[name] as Schema | undefined

/** Puts back what zod holds in code. */
const addChecks = ({ jsonSchema }: { jsonSchema: Schema }): void => {
  const kind = propertyOf(jsonSchema, "kind")?.const
  const value = propertyOf(jsonSchema, "value")
  if (value && (kind === "conductor_csa" || kind === "neutral_csa")) value.enum = [...sizesMm2]
  if (kind === "resistance") {
    jsonSchema.anyOf = [
      { properties: { value: { type: "number" } } },
      { properties: { qualifier: { const: ">" } }, required: ["qualifier"] },
    ]
  }
}

const publish = (schema: z.ZodType, name: string, io: "input" | "output") => {
  const made = z.toJSONSchema(schema, { target: "draft-2020-12", io, override: addChecks })
  const { $schema, ...rest } = made
  return {
    $schema,
    $id: `urn:bothhands:${name}:1`,
    title: `Bothhands ${name.replaceAll("-", " ")}, version 1`,
    ...rest,
  }
}

/** The schema of any one line of a job file. Unknown members are let through, as the reader does. */
export const jobFileLineSchema = () => publish(JobFileLine, "job-file-line", "input")

/** The schema of the exported JSON. */
export const recordSchema = () => publish(ExportedRecord, "record", "output")
