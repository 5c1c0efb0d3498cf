package app

import (
	"fmt"

	"ellwand/cmd/ellwand/job"
	"ellwand/fabric/cloth"
	"ellwand/pieces/measure"
)

// Cloths gives the cloths of a job in the widths asked: those of the job, or
// the given ones in place of them.
func Cloths(work *job.Work, widths []float64) ([]cloth.Cloth, error) {
	var out []cloth.Cloth
	for _, goods := range work.Cloths {
		more, err := clothIn(work, goods, widths)
		if err != nil {
			return nil, err
		}
		out = append(out, more...)
	}
	return out, nil
}

// clothIn gives one cloth in the widths asked, or in its own.
func clothIn(work *job.Work, goods job.Goods, widths []float64) ([]cloth.Cloth, error) {
	if len(widths) == 0 {
		widths = goods.Widths
	}
	var out []cloth.Cloth
	for _, width := range widths {
		c := clothOfWidth(goods, width)
		if width <= 2*c.Selvedge {
			return nil, fmt.Errorf("cloth %q: a width of %s leaves nothing between selvedges of %s; give the width from "+
				"edge to edge",
				c.Name, measure.Length(width).Format(work.Unit), measure.Length(c.Selvedge).Format(work.Unit))
		}
		out = append(out, c)
	}
	return out, nil
}

// clothOfWidth is a cloth as the first offer in that width has it, with its step and
// its least cut; where none has, as the job has it.
func clothOfWidth(goods job.Goods, width float64) cloth.Cloth {
	c := goods.Cloth
	for _, one := range goods.Offers {
		if one.Cloth.Width == width {
			c = one.Cloth
			c.Name = goods.Cloth.Name
			break
		}
	}
	c.Width = width
	return c
}

// OneWidthEach gives each cloth of a job its one width: its first; or the
// width given for all; or of as many widths as cloths, its own. A width of 0
// leaves a cloth its first.
func OneWidthEach(work *job.Work, widths []float64) ([]cloth.Cloth, error) {
	if len(widths) > 1 && len(widths) != len(work.Cloths) {
		return nil, refuse("%s names %d widths, but the job has %d cloths; give one width for all, or one for each",
			ArgumentWidths, len(widths), len(work.Cloths))
	}
	var out []cloth.Cloth
	for i, goods := range work.Cloths {
		width := goods.Widths[0]
		switch len(widths) {
		case 0:
		case 1:
			width = widths[0]
		default:
			width = widths[i]
		}
		if width == 0 {
			width = goods.Widths[0]
		}
		c, err := clothIn(work, goods, []float64{width})
		if err != nil {
			return nil, err
		}
		out = append(out, c...)
	}
	return out, nil
}
