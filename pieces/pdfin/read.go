// Package pdfin reads the lines and words that are drawn on the pages of a PDF file,
// at their true size. The file is taken apart by a library; what its pages draw is
// made out here.
package pdfin

import (
	"errors"

	"github.com/pdfcpu/pdfcpu/pkg/pdfcpu/types"

	"ellwand/pieces/found"
	"ellwand/pieces/linework"
)

// mostPages of a file [source.OwnChoice].
const mostPages = 500

// Lines that the pages draw, each page in its own frame: its lower left corner is at
// (0, 0), y runs up. Layers are what the file's layers (optional content) are called;
// lines of layers that are not shown are read, and said to be Hidden. The errors are
// *linework.Fault; of files that hold too much *found.TooMuch.
func Lines(data []byte, o found.Options) (linework.Drawing, error) {
	budget := linework.NewBudget(o.Limits)
	d, err := open(data, budget)
	if err != nil {
		return linework.Drawing{}, err
	}
	pages, err := d.pages()
	if err != nil {
		return linework.Drawing{}, err
	}
	out := linework.Drawing{}
	layers := d.layers()
	for i, p := range pages {
		out.Pages = append(out.Pages, linework.Page{Box: p.box})
		s := newShower(d, layers, &out, i)
		if err := s.page(p); err != nil {
			return linework.Drawing{}, onPage(err, i+1)
		}
	}
	if len(out.Lines) == 0 && out.Pictures > 0 {
		return linework.Drawing{}, &linework.Fault{Of: linework.OnlyPictures}
	}
	return out, nil
}

// onPage says on which page a fault is; of too much it is the file that has it.
func onPage(err error, page int) error {
	var one *linework.Fault
	if !errors.As(err, &one) {
		return err
	}
	here := *one
	here.Page = page
	return &here
}

// pages in their order.
func (d *document) pages() ([]page, error) {
	root, err := d.table.Catalog()
	if err != nil || root == nil {
		return nil, errDamaged
	}
	top, _ := root.Find("Pages")
	w := &pageWalk{d: d, seen: map[int]bool{}}
	if err := w.walk(top, inherited{}, 0); err != nil {
		return nil, err
	}
	if len(w.pages) == 0 {
		return nil, &linework.Fault{Of: linework.NoPages}
	}
	return w.pages, nil
}

// pageWalk goes through the tree of pages.
type pageWalk struct {
	d     *document
	seen  map[int]bool
	pages []page
}

func (w *pageWalk) walk(o types.Object, above inherited, depth int) error {
	if ref, ok := o.(types.IndirectRef); ok {
		n := ref.ObjectNumber.Value()
		if w.seen[n] {
			return errDamaged // pages that hold themselves
		}
		w.seen[n] = true
	}
	if err := w.d.budget.Depth(depth); err != nil {
		return err
	}
	node := w.d.dict(o)
	if node == nil {
		return nil
	}
	here := above.with(w.d, node)
	kids, ok := node.Find("Kids")
	if !ok {
		if len(w.pages) == mostPages {
			return &linework.Fault{Of: linework.TooManyPages, Number: mostPages}
		}
		p, err := here.page(w.d, node)
		w.pages = append(w.pages, p)
		return err
	}
	for _, kid := range w.d.array(kids) {
		if err := w.walk(kid, here, depth+1); err != nil {
			return err
		}
	}
	return nil
}
