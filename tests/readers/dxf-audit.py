"""Reads DXF files with ezdxf, as strictly as it can: a JSON list of their texts comes in, a list of what it found goes out.

Exit code 3 when ezdxf is not installed.
"""
import json
import os
import sys
import tempfile

try:
    import ezdxf
except ImportError:
    sys.exit(3)


def dimension(entity):
    dxf = entity.dxf
    block = entity.get_geometry_block()
    return {
        "block": dxf.geometry,
        "type": entity.dimtype,
        "layer": dxf.layer,
        "style": dxf.dimstyle,
        "text": dxf.text,
        "actual": dxf.actual_measurement,
        "measurement": entity.get_measurement(),
        "textAt": [dxf.text_midpoint.x, dxf.text_midpoint.y],
        "blockKinds": [e.dxftype() for e in block],
        "blockTexts": [e.plain_text() for e in block if e.dxftype() == "TEXT"],
    }


def layer(record):
    dxf = record.dxf
    return {"name": dxf.name, "color": dxf.color, "linetype": dxf.linetype, "lineweight": dxf.lineweight}


def polyline(entity):
    points = [list(point) for point in entity.get_points("xyb")]
    return {"layer": entity.dxf.layer, "closed": entity.closed, "points": points}


def audit(text):
    handle, path = tempfile.mkstemp(suffix=".dxf")
    try:
        with os.fdopen(handle, "wb") as file:
            file.write(text.encode("utf-8"))
        doc = ezdxf.readfile(path)
    finally:
        os.unlink(path)
    auditor = doc.audit()
    space = doc.modelspace()
    names = ("$INSUNITS", "$MEASUREMENT", "$DIMTXT", "$DIMASZ", "$DIMSCALE", "$LTSCALE", "$DIMTAD", "$DIMDSEP")
    return {
        "version": doc.dxfversion,
        "errors": [str(e.message) for e in auditor.errors],
        "fixes": [str(e.message) for e in auditor.fixes],
        "header": {name: doc.header[name] for name in names},
        "layers": [layer(record) for record in doc.layers],
        "linetypes": [record.dxf.name for record in doc.linetypes],
        "kinds": [e.dxftype() for e in space],
        "texts": [e.plain_text() for e in space if e.dxftype() == "TEXT"],
        "polylines": [polyline(e) for e in space if e.dxftype() == "LWPOLYLINE"],
        "dims": [dimension(e) for e in space if e.dxftype() == "DIMENSION"],
    }


json.dump([audit(text) for text in json.load(sys.stdin)], sys.stdout)
