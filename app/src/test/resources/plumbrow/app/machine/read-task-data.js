// Reads zipped task data with the npm package isoxml and answers as JSON what it found: warnings, the task, its zones, the
// grid and every cell as the package read it. Used by the tests only.
'use strict'
const fs = require('fs')
const { ISOXMLManager } = require(process.argv[2] + '/node_modules/isoxml')

async function read(file) {
  const manager = new ISOXMLManager()
  await manager.parseISOXMLFile(new Uint8Array(fs.readFileSync(file)), 'application/zip')
  const root = manager.rootElement.attributes
  const task = root.Task[0].attributes
  const grid = task.Grid[0]
  const values = [].concat(...task.TreatmentZone.map(zone => zone.attributes.ProcessDataVariable || []))
  grid.verifyGridSize(manager, 1)
  const bytes = Buffer.from(grid.binaryData)
  const cells = []
  if (grid.attributes.GridType === '1') {
    for (const code of bytes) cells.push(code)
  } else {
    for (let at = 0; at < bytes.length; at += 4) cells.push(bytes.readInt32LE(at))
  }
  const polygon = root.Partfield[0].attributes.PolygonnonTreatmentZoneonly
  return {
    warnings: manager.getWarnings(),
    major: root.VersionMajor,
    minor: root.VersionMinor,
    customer: root.Customer[0].attributes.CustomerLastName,
    farm: root.Farm[0].attributes.FarmDesignator,
    field: root.Partfield[0].attributes.PartfieldDesignator,
    area: root.Partfield[0].attributes.PartfieldArea,
    boundary: root.Partfield[0].toGeoJSON ? root.Partfield[0].toGeoJSON().length : polygon.length,
    polygons: polygon.map(one => one.attributes.PolygonType),
    products: root.Product.map(product => product.attributes.ProductDesignator),
    task: task.TaskDesignator,
    status: task.TaskStatus,
    fallback: [task.DefaultTreatmentZoneCode, task.PositionLostTreatmentZoneCode, task.OutOfFieldTreatmentZoneCode],
    zones: task.TreatmentZone.map(zone => ({
      code: zone.attributes.TreatmentZoneCode,
      value: zone.attributes.ProcessDataVariable[0].attributes.ProcessDataValue,
      ddi: zone.attributes.ProcessDataVariable[0].attributes.ProcessDataDDI,
      product: zone.attributes.ProcessDataVariable[0].attributes.ProductIdRef.entity.attributes.ProductDesignator
    })),
    ddis: [...new Set(values.map(value => value.attributes.ProcessDataDDI))],
    grid: {
      type: grid.attributes.GridType,
      north: grid.attributes.GridMinimumNorthPosition,
      east: grid.attributes.GridMinimumEastPosition,
      high: grid.attributes.GridCellNorthSize,
      wide: grid.attributes.GridCellEastSize,
      columns: grid.attributes.GridMaximumColumn,
      rows: grid.attributes.GridMaximumRow
    },
    cells
  }
}

Promise.all(process.argv.slice(3).map(read)).then(
  found => process.stdout.write(JSON.stringify(found)),
  fault => {
    process.stderr.write(String(fault && fault.stack))
    process.exit(1)
  })
