#!/usr/bin/env python3
"""Makes counties.txt.gz, the county lines that Plumbrow ships, from the npm package us-atlas 3.0.1.

    npm pack us-atlas@3.0.1 && tar xzf us-atlas-3.0.1.tgz
    python3 counties.py package/counties-10m.json ../resources/plumbrow/science/reference/counties.txt.gz

One line for each arc: "a" and its points as steps on the package's grid, the first from 0 0. One line for each county:
"c", FIPS code, name, and its rings; a ring is a list of arcs (~n is arc n backwards), rings are parted by "/", a ring
that is a hole begins with "h". Nothing is rounded or left out but the merged states and the nation.
"""
import gzip, json, sys

# In these states a code from 510 on is a city that belongs to no county and shares its name with one. Carson City in
# Nevada bears the word in its name already.
CITIES = {"24", "29", "51"}

atlas = json.load(open(sys.argv[1]))
scale, origin = atlas["transform"]["scale"], atlas["transform"]["translate"]
lines = [" ".join(["g", *(repr(one) for one in scale + origin)])]
for arc in atlas["arcs"]:
    lines.append("a " + " ".join(f"{x} {y}" for x, y in arc))
for county in sorted(atlas["objects"]["counties"]["geometries"], key=lambda one: one["id"]):
    fips, name = county["id"], county["properties"]["name"]
    if fips[:2] in CITIES and int(fips[2:]) >= 510:
        name += " city"
    polygons = county["arcs"] if county["type"] == "MultiPolygon" else [county["arcs"]]
    rings = [("h" if i else "") + ",".join(str(arc) for arc in ring)
             for polygon in polygons for i, ring in enumerate(polygon)]
    lines.append("\t".join(["c", fips, name, "/".join(rings)]))
text = ("\n".join(lines) + "\n").encode()
with open(sys.argv[2], "wb") as out, gzip.GzipFile("", "wb", 9, out, mtime=0) as packed:
    packed.write(text)
