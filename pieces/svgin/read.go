// Package svgin reads drawings in SVG (version 1.1, and what version 2 kept of it):
// lines and words at their true size, through every transform and viewport.
package svgin

import (
	"ellwand/pieces"
	"ellwand/pieces/found"
	"ellwand/pieces/linework"
)

// Lines of a drawing. What is not shown (display: none, definitions) is left out; y runs
// up from the lower edge of the drawing. A unit of the options counts where the file
// does not say its size, or says it in pixels; else those are 96 to the inch. The errors
// are *linework.Fault; of files that hold too much *found.TooMuch.
func Lines(data []byte, o found.Options) (linework.Drawing, error) {
	budget := linework.NewBudget(o.Limits)
	root, pictures, err := parse(data, budget)
	if err != nil {
		return linework.Drawing{}, err
	}
	if root.name != "svg" {
		return linework.Drawing{}, &linework.Fault{Of: linework.NotSVG, Text: root.name}
	}
	w := &walker{budget: budget, ids: idsOf(root), rules: rulesOf(root), drawing: linework.Drawing{Pictures: pictures}}
	unit := o.Unit
	if unit == 0 {
		unit = Pixel
	}
	size, err := outermost(root, unit)
	if err != nil {
		return linework.Drawing{}, err
	}
	w.drawing.About = root.about()
	if t := root.child("title"); t != nil {
		w.drawing.Title = short(t.text)
	}
	w.drawing.Unsized, w.drawing.InPixels = size.unsized, size.inPixels
	up := pieces.Motion{A: 1, D: -1, F: size.height}
	w.drawing.Pages = []linework.Page{{Box: size.box()}}
	top := state{by: size.inside.Then(up), view: size.user, style: rootStyle(), group: -1}
	if err := w.children(root, top.styled(root, w.rules)); err != nil {
		return linework.Drawing{}, err
	}
	return w.drawing, nil
}
