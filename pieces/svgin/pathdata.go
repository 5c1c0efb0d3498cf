package svgin

import (
	"strings"

	"github.com/paulmach/orb"

	"ellwand/pieces/geometry"
	"ellwand/pieces/linework"
)

// pathData draws the d of a path [source.SVG]: all its commands, large letters for
// places, small ones for ways from where the line has come to.
func pathData(text string, chain *linework.Chain) error {
	p := pen{scanner: scanner{text: text}, chain: chain}
	if p.done() || strings.TrimSpace(text) == "none" {
		return nil
	}
	if c := p.peek(); c != 'M' && c != 'm' {
		return &linework.Fault{Of: linework.NoMove, Text: p.from(p.at)}
	}
	for !p.done() {
		command := p.peek()
		if !strings.ContainsRune("MmLlHhVvCcSsQqTtAaZz", rune(command)) {
			return &linework.Fault{Of: linework.NoCommand, Text: p.from(p.at)}
		}
		p.at++
		for first := true; ; first = false {
			if err := p.step(command, first); err != nil {
				return err
			}
			p.comma()
			if command == 'Z' || command == 'z' || !p.startsNumber() {
				break
			}
		}
	}
	return nil
}

// pen is where the path has come to.
type pen struct {
	scanner
	chain *linework.Chain
	// control is the last control point, that a smooth curve mirrors; after is the
	// command that has set it, as a large letter.
	control orb.Point
	after   byte
}

func (p *pen) step(command byte, first bool) error {
	large := command &^ 0x20
	relative := command != large
	p.space()
	var err error
	switch large {
	case 'Z':
		p.chain.Close()
	case 'M':
		err = p.move(relative, first)
	case 'L':
		err = p.line(relative)
	case 'H', 'V':
		err = p.level(large == 'V', relative)
	case 'C', 'S':
		err = p.cubic(large == 'S', relative)
	case 'Q', 'T':
		err = p.quadratic(large == 'T', relative)
	case 'A':
		err = p.arc(relative)
	}
	p.after = large
	return err
}

func (p *pen) move(relative, first bool) error {
	to, err := p.point(relative)
	if err != nil {
		return err
	}
	if first {
		p.chain.MoveTo(to)
	} else {
		p.chain.LineTo(to)
	}
	return nil
}

func (p *pen) line(relative bool) error {
	to, err := p.point(relative)
	if err == nil {
		p.chain.LineTo(to)
	}
	return err
}

func (p *pen) level(upright, relative bool) error {
	x, err := p.value()
	if err != nil {
		return err
	}
	to, axis := p.chain.At(), 0
	if upright {
		axis = 1
	}
	if relative {
		x += to[axis]
	}
	to[axis] = x
	p.chain.LineTo(to)
	return nil
}

func (p *pen) cubic(smooth, relative bool) error {
	first := p.mirrored("CS")
	var err error
	if !smooth {
		if first, err = p.point(relative); err != nil {
			return err
		}
	}
	second, err := p.point(relative)
	if err != nil {
		return err
	}
	to, err := p.point(relative)
	if err != nil {
		return err
	}
	p.control = second
	p.chain.CurveTo(first, second, to)
	return nil
}

func (p *pen) quadratic(smooth, relative bool) error {
	control := p.mirrored("QT")
	var err error
	if !smooth {
		if control, err = p.point(relative); err != nil {
			return err
		}
	}
	to, err := p.point(relative)
	if err != nil {
		return err
	}
	p.control = control
	from := p.chain.At()
	p.chain.CurveTo(geometry.Between(from, control, 2.0/3), geometry.Between(to, control, 2.0/3), to)
	return nil
}

func (p *pen) arc(relative bool) error {
	var v [3]float64
	var err error
	for i := range v {
		if v[i], err = p.value(); err != nil {
			return err
		}
	}
	large, err := p.flag()
	if err != nil {
		return err
	}
	p.comma()
	sweep, err := p.flag()
	if err != nil {
		return err
	}
	p.comma()
	to, err := p.point(relative)
	if err == nil {
		ellipticArc(p.chain, v[0], v[1], v[2], large, sweep, to)
	}
	return err
}

// mirrored is the last control point mirrored at where the line has come to, if it is
// one of such a curve.
func (p *pen) mirrored(of string) orb.Point {
	at := p.chain.At()
	if p.after == 0 || !strings.Contains(of, string(p.after)) {
		return at
	}
	return geometry.Sub(geometry.Times(at, 2), p.control)
}

func (p *pen) point(relative bool) (orb.Point, error) {
	x, err := p.value()
	if err != nil {
		return orb.Point{}, err
	}
	y, err := p.value()
	if relative {
		return geometry.Add(p.chain.At(), orb.Point{x, y}), err
	}
	return orb.Point{x, y}, err
}

// value and the comma after it.
func (p *pen) value() (float64, error) {
	x, err := p.number()
	p.comma()
	return x, err
}
