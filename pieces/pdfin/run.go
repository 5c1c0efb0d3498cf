package pdfin

import (
	"slices"

	"github.com/paulmach/orb"
	"github.com/pdfcpu/pdfcpu/pkg/pdfcpu/types"

	"ellwand/pieces/found"
	"ellwand/pieces/linework"
)

// mostOperands of one operator [source.PDF17, annex C: 33 in an array of colours].
const mostOperands = 64

// page draws what is on it.
func (s *shower) page(p page) error {
	s.state = state{by: p.by, width: 1, stroke: black, fill: black, clip: p.box}
	var content []byte
	contents := p.contents
	list, ok := s.d.resolve(contents).(types.Array)
	if !ok {
		list = types.Array{contents}
	}
	for _, one := range list {
		part, err := s.d.content(one)
		if err != nil {
			return err
		}
		content = append(append(content, part...), '\n')
	}
	return s.run(content, p.resources)
}

// run the operators of a content, with what they name.
func (s *shower) run(content []byte, resources types.Dict) error {
	l := &lexer{data: content}
	s.chain = linework.NewChain(s.by, s.d.budget)
	kept, marks := len(s.kept), len(s.marks)
	var before operands
	for t := l.next(); t.kind != ending; t = l.next() {
		if t.kind != operator {
			if len(before) < mostOperands {
				before = append(before, t)
			}
			continue
		}
		word := string(t.text)
		if word == "BI" {
			s.out.Pictures++
			l.skipImage()
		} else if word == "Q" && len(s.kept) == kept {
			before = nil
			continue // of what it has not kept itself
		} else if err := s.operate(word, before, resources); err != nil {
			return err
		}
		before = before[:0]
	}
	if len(s.kept) > kept {
		s.state, s.kept = s.kept[kept], s.kept[:kept]
	}
	s.marks = s.marks[:min(marks, len(s.marks))]
	return nil
}

// operate by the word of an operator; those that change nothing here are passed over.
func (s *shower) operate(word string, o operands, resources types.Dict) error {
	if do, ok := drawing[word]; ok {
		do(s, o)
		return nil
	}
	if how, ok := painting[word]; ok {
		return s.paint(how)
	}
	if do, ok := wording[word]; ok {
		return do(s, o, resources)
	}
	switch word {
	case "q":
		s.kept = append(s.kept, s.state)
		return s.d.budget.Depth(len(s.kept) / 4)
	case "Q":
		s.state, s.kept = s.kept[len(s.kept)-1], s.kept[:len(s.kept)-1]
	case "cm":
		if m, ok := o.numbers(6); ok {
			s.by = matrix(m).Then(s.by)
		}
	case "W", "W*":
		s.clipping = true
	case "Do":
		return s.show(o.name(), resources)
	case "BDC", "BMC":
		s.mark(o, resources)
	case "EMC":
		s.marks = s.marks[:max(0, len(s.marks)-1)]
	}
	return nil
}

// mark what follows as belonging to a layer, or to nothing.
func (s *shower) mark(o operands, resources types.Dict) {
	here := layer{}
	if len(s.marks) > 0 {
		here = s.marks[len(s.marks)-1]
	}
	if len(o) == 2 && string(o[0].text) == "OC" {
		if one := s.d.named(resources, "Properties", o.name()); one != nil {
			hidden := here.hidden
			here = s.d.layerOf(one, s.layers)
			here.hidden = here.hidden || hidden
		}
	}
	if len(s.marks) < mostNesting {
		s.marks = append(s.marks, here)
	}
}

// show a form, or count a picture.
func (s *shower) show(name string, resources types.Dict) error {
	o := s.d.named(resources, "XObject", name)
	form := s.d.dict(o)
	if form == nil {
		return nil
	}
	sub, _ := form.Find("Subtype")
	if s.d.name(sub) != "Form" {
		s.out.Pictures++
		return nil
	}
	if err := s.d.budget.Spend(found.Things, 1); err != nil {
		return err
	}
	if err := s.d.budget.Depth(len(s.showing)); err != nil {
		return err
	}
	number := -1
	if ref, ok := o.(types.IndirectRef); ok {
		number = ref.ObjectNumber.Value()
		if slices.Contains(s.showing, number) {
			return errDamaged // it shows itself
		}
	}
	return s.form(o, form, number, resources)
}

func (s *shower) form(o types.Object, form types.Dict, number int, resources types.Dict) error {
	content, err := s.d.content(o)
	if err != nil {
		return err
	}
	before, chain, marks := s.state, s.chain, s.marks
	s.showing = append(s.showing, number)
	if m, ok := form.Find("Matrix"); ok {
		if m, ok := s.d.numbers(m, 6); ok {
			s.by = matrix(m).Then(s.by)
		}
	}
	if box, ok := form.Find("BBox"); ok {
		if box, ok := s.d.numbers(box, 4); ok {
			s.clip = common(s.clip, s.boxOf(box))
		}
	}
	if own, ok := form.Find("Resources"); ok && s.d.dict(own) != nil {
		resources = s.d.dict(own)
	}
	if oc, ok := form.Find("OC"); ok {
		s.marks = append(s.marks, s.d.layerOf(oc, s.layers))
	}
	err = s.run(content, resources)
	s.showing = s.showing[:len(s.showing)-1]
	s.state, s.chain, s.marks = before, chain, marks
	return err
}

// boxOf four numbers in the units of the state, mm of the page.
func (s *shower) boxOf(box []float64) orb.Bound {
	corners := orb.MultiPoint{}
	for _, p := range [4]orb.Point{{box[0], box[1]}, {box[2], box[1]}, {box[2], box[3]}, {box[0], box[3]}} {
		corners = append(corners, s.by.Apply(p))
	}
	return corners.Bound()
}
