package pdfin

// operands of an operator.
type operands []token

// numbers that stand last before the operator; not ok where they are not so many.
func (o operands) numbers(many int) ([]float64, bool) {
	if len(o) < many {
		return nil, false
	}
	out := make([]float64, many)
	for i, t := range o[len(o)-many:] {
		if t.kind != numeric {
			return nil, false
		}
		out[i] = t.number
	}
	return out, true
}

// all numbers before the operator.
func (o operands) all() []float64 {
	var out []float64
	for _, t := range o {
		if t.kind == numeric {
			out = append(out, t.number)
		}
	}
	return out
}

func (o operands) name() string {
	if n := len(o); n > 0 && o[n-1].kind == name {
		return string(o[n-1].text)
	}
	return ""
}
