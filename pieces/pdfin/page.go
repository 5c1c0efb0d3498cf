package pdfin

import (
	"math"

	"github.com/paulmach/orb"
	"github.com/pdfcpu/pdfcpu/pkg/pdfcpu/types"

	"ellwand/pieces"
	"ellwand/pieces/linework"
)

// point of PDF in mm: 72 to the inch [source.PDF17].
const point = 25.4 / 72

// page is a sheet, and what is drawn on it.
type page struct {
	box       orb.Bound     // mm
	by        pieces.Motion // from its units to mm
	resources types.Dict
	contents  types.Object
}

// inherited is what pages take from those above them.
type inherited struct {
	media, crop []float64
	turn        float64
	resources   types.Dict
}

func (i inherited) with(d *document, node types.Dict) inherited {
	get := func(key string) types.Object { o, _ := node.Find(key); return o }
	if box, ok := d.numbers(get("MediaBox"), 4); ok {
		i.media = box
	}
	if box, ok := d.numbers(get("CropBox"), 4); ok {
		i.crop = box
	}
	if turn, ok := d.number(get("Rotate")); ok {
		i.turn = turn
	}
	if r := d.dict(get("Resources")); r != nil {
		i.resources = r
	}
	return i
}

// page of a node: the part that is shown, turned as it is shown.
func (i inherited) page(d *document, node types.Dict) (page, error) {
	box := i.crop
	if box == nil {
		box = i.media
	}
	if box == nil {
		return page{}, &linework.Fault{Of: linework.NoPaper}
	}
	unit := point
	if o, ok := node.Find("UserUnit"); ok {
		if n, ok := d.number(o); ok && n > 0 {
			unit *= n
		}
	}
	x0, x1 := math.Min(box[0], box[2]), math.Max(box[0], box[2])
	y0, y1 := math.Min(box[1], box[3]), math.Max(box[1], box[3])
	width, height := (x1-x0)*unit, (y1-y0)*unit
	if !(width > 0 && height > 0 && width < 1e6 && height < 1e6) {
		return page{}, &linework.Fault{Of: linework.PaperNoSize}
	}
	by := pieces.Move(-x0, -y0).Then(pieces.Scale(unit))
	switch turn := math.Mod(math.Mod(i.turn, 360)+360, 360); turn {
	case 90:
		by = by.Then(pieces.Turn(-90)).Then(pieces.Move(0, width))
		width, height = height, width
	case 180:
		by = by.Then(pieces.Turn(180)).Then(pieces.Move(width, height))
	case 270:
		by = by.Then(pieces.Turn(90)).Then(pieces.Move(height, 0))
		width, height = height, width
	}
	contents, _ := node.Find("Contents")
	return page{orb.Bound{Max: orb.Point{width, height}}, by, i.resources, contents}, nil
}
