import { applyRemedy } from './applyRemedy.ts';
import * as assembly from './assemblyCommands.ts';
import type { Command } from './command.ts';
import * as design from './designCommands.ts';
import * as doubt from './doubtCommands.ts';
import * as fitting from './fittingCommands.ts';
import * as flanking from './flankingCommands.ts';
import * as layer from './layerCommands.ts';
import * as material from './materialCommands.ts';
import * as opening from './openingCommands.ts';
import * as option from './optionCommands.ts';
import * as part from './partCommands.ts';
import * as project from './projectCommands.ts';
import * as room from './roomCommands.ts';
import * as surface from './surfaceCommands.ts';
import * as vent from './ventCommands.ts';
import * as ventOpening from './ventOpeningCommands.ts';

const table = {
  renameProject: project.renameProject,
  setNote: project.setNote,
  setSource: project.setSource,
  setCurrency: project.setCurrency,
  setCompare: project.setCompare,
  setTarget: doubt.setTarget,
  setWorkmanship: doubt.setWorkmanship,
  addSurface: surface.addSurface,
  removeSurface: surface.removeSurface,
  setSurface: surface.setSurface,
  addSurfaces: room.addSurfaces,
  setSurfaces: room.setSurfaces,
  addMadeOpening: room.addMadeOpening,
  moveOpenings: room.moveOpenings,
  addOpening: opening.addOpening,
  removeOpening: opening.removeOpening,
  setOpening: opening.setOpening,
  moveOpening: opening.moveOpening,
  rehangOpening: opening.rehangOpening,
  setPart: part.setPart,
  addCandidate: part.addCandidate,
  removeCandidate: part.removeCandidate,
  setCandidate: part.setCandidate,
  adoptCandidate: part.adoptCandidate,
  setSeals: fitting.setSeals,
  setDoorHoles: fitting.setDoorHoles,
  setSecondLeaf: fitting.setSecondLeaf,
  addServiceItem: fitting.addServiceItem,
  setServiceItem: fitting.setServiceItem,
  removeServiceItem: fitting.removeServiceItem,
  addFlanking: flanking.addFlanking,
  setFlanking: flanking.setFlanking,
  removeFlanking: flanking.removeFlanking,
  addOption: option.addOption,
  removeOption: option.removeOption,
  setOptionSwap: option.setOptionSwap,
  renameOption: option.renameOption,
  adoptOption: option.adoptOption,
  addAssembly: assembly.addAssembly,
  duplicateAssembly: assembly.duplicateAssembly,
  renameAssembly: assembly.renameAssembly,
  setAssemblyNote: assembly.setAssemblyNote,
  setAssemblyPrice: assembly.setAssemblyPrice,
  removeAssembly: assembly.removeAssembly,
  insertLayer: layer.insertLayer,
  removeLayer: layer.removeLayer,
  moveLayer: layer.moveLayer,
  setLayer: layer.setLayer,
  addMaterial: material.addMaterial,
  setMaterial: material.setMaterial,
  removeMaterial: material.removeMaterial,
  addVent: vent.addVent,
  addVentIn: ventOpening.addVentIn,
  removeVent: vent.removeVent,
  setVent: vent.setVent,
  addVentElement: vent.addVentElement,
  removeVentElement: vent.removeVentElement,
  moveVentElement: vent.moveVentElement,
  setVentElement: vent.setVentElement,
  putVentDesign: design.putVentDesign,
  setAir: vent.setAir,
  applyRemedy,
} as const;

type ArgumentsOf<C> = C extends Command<infer A> ? A : never;
type ArgumentTable = { readonly [C in keyof typeof table]: ArgumentsOf<(typeof table)[C]> };

export type CommandName = keyof ArgumentTable;
export type CommandArguments<C extends CommandName> = ArgumentTable[C];

/** Every edit there is, by name: what the window's store, and nothing else, runs on a project. */
export const commands: { readonly [C in CommandName]: Command<ArgumentTable[C]> } = table;

export { CommandRefusal } from './command.ts';
export type { Command } from './command.ts';
