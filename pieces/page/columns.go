package page

// Start has the words go on in the first column, from so far down the page.
func (p *Pages) Start(c Columns) { p.columns, p.columns.top, p.columns.at = c, p.Y, 0 }

// ColumnWidth of each, mm.
func (p *Pages) ColumnWidth() float64 {
	n := float64(max(1, p.columns.Count))
	return (p.Inner() - (n-1)*p.columns.Gap) / n
}

// X is where the lines of the column begin.
func (p *Pages) X() float64 {
	return p.Edge + float64(p.columns.at)*(p.ColumnWidth()+p.columns.Gap)
}

// IsAtTop reports whether nothing stands in the column yet.
func (p *Pages) IsAtTop() bool { return p.Y <= p.columns.top }

// NextColumn goes on at the top of the next column; it reports whether there is
// one on this page.
func (p *Pages) NextColumn() bool {
	if p.columns.at+1 >= p.columns.Count {
		return false
	}
	p.columns.at++
	p.Y = p.columns.top
	return true
}
