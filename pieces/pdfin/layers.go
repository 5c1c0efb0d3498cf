package pdfin

import (
	"strings"

	"github.com/pdfcpu/pdfcpu/pkg/pdfcpu/types"
)

// layer is a group of optional content.
type layer struct {
	name   string
	hidden bool
}

// layers by the number of their object.
func (d *document) layers() map[int]layer {
	out := map[int]layer{}
	root, err := d.table.Catalog()
	if err != nil {
		return out
	}
	o, _ := root.Find("OCProperties")
	all := d.dict(o)
	if all == nil {
		return out
	}
	list, _ := all.Find("OCGs")
	usual, _ := all.Find("D")
	config := d.dict(usual)
	base, _ := config.Find("BaseState")
	for _, one := range d.array(list) {
		if ref, ok := one.(types.IndirectRef); ok {
			words, _ := d.dict(one).Find("Name")
			out[ref.ObjectNumber.Value()] = layer{strings.TrimSpace(d.text(words)), d.name(base) == "OFF"}
		}
	}
	for key, hidden := range map[string]bool{"ON": false, "OFF": true} {
		switched, _ := config.Find(key)
		for _, one := range d.array(switched) {
			if ref, ok := one.(types.IndirectRef); ok {
				l := out[ref.ObjectNumber.Value()]
				l.hidden = hidden
				out[ref.ObjectNumber.Value()] = l
			}
		}
	}
	return out
}

// layerOf what is marked: a layer, or several of which the first counts.
func (d *document) layerOf(o types.Object, all map[int]layer) layer {
	if ref, ok := o.(types.IndirectRef); ok {
		if l, ok := all[ref.ObjectNumber.Value()]; ok {
			return l
		}
	}
	several, _ := d.dict(o).Find("OCGs")
	if ref, ok := several.(types.IndirectRef); ok {
		return all[ref.ObjectNumber.Value()]
	}
	for _, one := range d.array(several) {
		if ref, ok := one.(types.IndirectRef); ok {
			return all[ref.ObjectNumber.Value()]
		}
	}
	return layer{}
}
