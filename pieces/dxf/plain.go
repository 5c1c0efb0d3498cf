package dxf

import (
	"ellwand/pieces/found"
)

// plain is a drawing of lines: whatever they close to is a piece.
func (f *file) plain(o found.Options) (found.Drawing, error) {
	all, err := f.explode(f.entities, identity, o.Limits)
	if err != nil {
		return found.Drawing{}, err
	}
	unit, err := f.scale(all, o)
	if err != nil {
		return found.Drawing{}, err
	}
	by := affine{a: unit, d: unit}
	sheet := found.LooseLines{Notes: f.notes()}
	for _, one := range all {
		switch one.kind {
		case lineKind:
			sheet.Strokes = append(sheet.Strokes, found.Stroke{Path: by.path(one.path), Group: one.layer})
		case pointKind:
			sheet.Points = append(sheet.Points, found.Spot{At: by.apply(one.at), Group: one.layer})
		case textKind:
			sheet.Texts = append(sheet.Texts, found.Text{Words: one.words, At: by.apply(one.at), Height: one.height * unit})
		}
	}
	out, err := sheet.Drawing(o)
	if err != nil || len(out.Pieces) > 0 {
		return out, err
	}
	for i := range sheet.Strokes { // the lines of one outline may be on several layers
		sheet.Strokes[i].Group = ""
	}
	return sheet.Drawing(o)
}

// scale is the unit of a drawing, mm: what was said goes before what it says itself.
func (f *file) scale(all []placed, o found.Options) (float64, error) {
	switch {
	case o.Unit > 0:
		return o.Unit, nil
	case f.unit > 0:
		return f.unit, nil
	}
	across, up := extent(all)
	return 0, &found.NeedUnit{Across: across, Up: up}
}

// notes on what was left out.
func (f *file) notes() []found.Note {
	var out []found.Note
	for _, name := range f.names {
		out = append(out, found.Note{Kind: found.Ignored, Count: f.left[name], What: name})
	}
	return out
}
