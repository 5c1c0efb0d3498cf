package drawing

import (
	"slices"

	"github.com/paulmach/orb"
)

// Layers of drawings of pieces, by what they hold.
const (
	CutLayer   = "cut"   // lines to cut along
	SewLayer   = "sew"   // lines to sew along
	MarksLayer = "marks" // notches, darts, marks, grainlines, folds
	WordsLayer = "words"
)

// layerMark stands before what belongs to a layer, layerEnd after it.
type layerMark struct {
	name string
	box  orb.Bound
}

type layerEnd struct{ box orb.Bound }

func (l layerMark) bound() orb.Bound { return l.box }

func (l layerEnd) bound() orb.Bound { return l.box }

// Layer puts what a function draws on the picture into a layer, which SVG, and PDF
// where it is asked for, hold apart from the others. Layers lie not in each other.
func (p *Picture) Layer(name string, draw func()) {
	begin := len(p.items)
	draw()
	if len(p.items) == begin {
		return
	}
	drawn := Picture{items: p.items[begin:]}
	box := drawn.Bound()
	p.items = slices.Insert(p.items, begin, item(layerMark{name, box}))
	p.items = append(p.items, layerEnd{box})
}

// layersOf a picture and of what its windows show, in the order in which they begin.
func layersOf(p *Picture) []string {
	var out []string
	for _, it := range p.items {
		switch it := it.(type) {
		case layerMark:
			if !slices.Contains(out, it.name) {
				out = append(out, it.name)
			}
		case window:
			for _, name := range layersOf(it.picture) {
				if !slices.Contains(out, name) {
					out = append(out, name)
				}
			}
		}
	}
	return out
}

// ofLayer is what of a picture belongs to a layer, or to none: "". Groups that have
// nothing of it are left out.
func ofLayer(p *Picture, name string) *Picture {
	out := &Picture{}
	current := ""
	var open []int // where groups begin
	for _, it := range p.items {
		switch it := it.(type) {
		case layerMark:
			current = it.name
		case layerEnd:
			current = ""
		case heading:
			open = append(open, len(out.items))
			out.items = append(out.items, it)
		case ending:
			begin := open[len(open)-1]
			open = open[:len(open)-1]
			if begin == len(out.items)-1 {
				out.items = out.items[:begin]
			} else {
				out.items = append(out.items, it)
			}
		case window:
			it.picture = ofLayer(it.picture, name)
			if len(it.picture.items) > 0 {
				out.items = append(out.items, it)
			}
		default:
			if current == name {
				out.items = append(out.items, it)
			}
		}
	}
	return out
}
