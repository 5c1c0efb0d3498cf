package dxf

import (
	"slices"

	"ellwand/pieces/found"
)

// isPattern says that the blocks of a file are pieces: one of them names its piece,
// or has a boundary with its corners.
func (f *file) isPattern() bool {
	return slices.ContainsFunc(f.order, isPiece)
}

func isPiece(b *block) bool {
	bounds, named := false, false
	for _, e := range b.entities {
		bounds = bounds || e.kind == lineKind && numbered(e.layer) == boundaryLayer
		named = named || e.kind == pointKind && numbered(e.layer) == turnLayer
		if e.kind == textKind {
			key, _, ok := keyed(e.words)
			named = named || ok && isKey(key, pieceNameKey)
		}
	}
	return bounds && named
}

// pattern is a piece for every block, in the order in which they are inserted.
func (f *file) pattern(o found.Options) (found.Drawing, error) {
	out := found.Drawing{Notes: f.notes()}
	unit := f.style(&out)
	switch {
	case o.Unit > 0:
		unit = o.Unit
	case unit == 0 && f.unit > 0:
		unit = f.unit
	case unit == 0:
		unit = 1
		out.Notes = append(out.Notes, found.Note{Kind: found.UnitAssumed, Count: 1, What: "mm"})
	}
	by := affine{a: unit, d: unit}
	done := map[*block]bool{}
	add := func(b *block, m affine) error {
		if b == nil || done[b] || !isPiece(b) {
			return nil
		}
		done[b] = true
		all, err := f.explode(b.entities, by.after(m), o.Limits)
		if err != nil {
			return err
		}
		piece, notes, err := pieceOf(b.name, all, o)
		if err != nil {
			return err
		}
		sides, parted := piece.Sides()
		for _, n := range notes {
			n.Piece = 1
			parted = append(parted, n)
		}
		for _, n := range parted {
			n.Piece += len(out.Pieces)
			out.Notes = append(out.Notes, n)
		}
		out.Pieces = append(out.Pieces, sides...)
		return o.Limits.Check(found.Outlines, len(out.Pieces))
	}
	for _, e := range f.entities {
		if e.kind != insertKind {
			continue
		}
		b := f.blocks[e.block]
		if b == nil {
			continue
		}
		if err := add(b, e.maps[0].after(affine{a: 1, d: 1, e: -b.base[0], f: -b.base[1]})); err != nil {
			return out, err
		}
	}
	for _, b := range f.order {
		if err := add(f.blocks[b.name], identity); err != nil {
			return out, err
		}
	}
	return out, nil
}

// style reads the words about the whole pattern, and gives its unit, mm, or 0.
func (f *file) style(out *found.Drawing) (unit float64) {
	read := func(all []entity) {
		for _, e := range all {
			key, value, ok := keyed(e.words)
			switch {
			case !ok:
			case isKey(key, styleNameKey) && out.Title == "":
				out.Title = value
			case isKey(key, unitsKey) && unit == 0:
				unit = unitOf(value)
			}
		}
	}
	read(f.entities)
	for _, b := range f.order {
		read(b.entities)
	}
	return unit
}

func pieceOf(name string, all []placed, o found.Options) (found.Piece, []found.Note, error) {
	d := &drawnPiece{left: map[string]int{}, untold: map[string]int{}}
	for _, one := range all {
		switch one.kind {
		case lineKind:
			d.line(one)
		case pointKind:
			d.point(one)
		case textKind:
			d.text(one)
		}
	}
	if d.Name == "" {
		d.Name = name
	}
	notes, err := d.outline(o)
	if err != nil {
		return d.Piece, nil, err
	}
	d.lines(o)
	d.label()
	for _, what := range d.names {
		notes = append(notes, found.Note{Kind: found.Ignored, Count: d.left[what], What: "layer " + what})
	}
	for _, key := range d.keys {
		notes = append(notes, found.Note{Kind: found.Untold, Count: d.untold[key], What: key})
	}
	return d.Piece, notes, nil
}
