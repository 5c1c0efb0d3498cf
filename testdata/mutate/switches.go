package main

import (
	"fmt"
	"go/ast"
	"go/token"
	"go/types"
	"strings"
)

// A switched change stands in the code beside what it replaces, and a switch says
// while the tests run which of the two is meant: so that all changes are compiled at
// once (mutant schemata: Untch, Offutt and Harrold 1993).

// edit makes a switched change of a file: it puts texts before and behind some bytes,
// and another in the place of an operator among them.
type edit struct {
	from, to       int
	before, behind string
	at, until      int // the operator; none where they are equal
	operator       string
}

// generic are the functions of switch.txt that decide between two operators: the one
// that stands there and the other. Of a pair that can be told apart by its result
// alone there is flip.
var generic = map[token.Token]map[token.Token]string{
	token.LSS: {token.LEQ: "mutateLSS_LEQ", token.GEQ: "mutateLSS_GEQ"},
	token.LEQ: {token.LSS: "mutateLEQ_LSS", token.GTR: "mutateLEQ_GTR"},
	token.GTR: {token.GEQ: "mutateGTR_GEQ", token.LEQ: "mutateGTR_LEQ"},
	token.GEQ: {token.GTR: "mutateGEQ_GTR", token.LSS: "mutateGEQ_LSS"},
	token.ADD: {token.SUB: "mutateADD_SUB"}, token.SUB: {token.ADD: "mutateSUB_ADD"},
	token.MUL: {token.QUO: "mutateMUL_QUO"}, token.QUO: {token.MUL: "mutateQUO_MUL"},
	token.LAND: {token.LOR: "mutateLAND_LOR"}, token.LOR: {token.LAND: "mutateLOR_LAND"},
	token.ADD_ASSIGN: {token.SUB_ASSIGN: "mutateAddTo"}, token.SUB_ASSIGN: {token.ADD_ASSIGN: "mutateSubTo"},
	token.MUL_ASSIGN: {token.QUO_ASSIGN: "mutateMulTo"}, token.QUO_ASSIGN: {token.MUL_ASSIGN: "mutateQuoTo"},
	token.INC: {token.DEC: "mutateInc"}, token.DEC: {token.INC: "mutateDec"},
}

// switched makes the edit of a change whose switch has a number; false where there is
// no such, as in the declaration of a constant.
func (c *code) switched(m mutant, number int) (edit, bool) {
	if whole := c.constant(m); whole != nil {
		return c.picked(m, whole, number)
	}
	switch n := m.around[len(m.around)-1].(type) {
	case *ast.BinaryExpr:
		return c.binary(m, n, number), true
	case *ast.AssignStmt:
		call := fmt.Sprintf("%s(%d, &", generic[n.Tok][otherToken(m)], number)
		return c.around(n.Lhs[0].Pos(), n.Rhs[0].End(), call, ")").instead(m, ","), true
	case *ast.IncDecStmt:
		call := fmt.Sprintf("%s(%d, &", generic[n.Tok][otherToken(m)], number)
		return c.around(n.X.Pos(), n.X.End(), call, ")").instead(m, ""), true
	case *ast.UnaryExpr:
		return c.around(n.Pos(), n.End(), fmt.Sprintf("mutateMinus(%d, ", number), ")").instead(m, ""), true
	case *ast.IfStmt:
		return c.around(n.Cond.Pos(), n.Cond.End(), fmt.Sprintf("mutateFlip(%d, ", number), ")"), true
	}
	return edit{}, false
}

// binary is the edit of an operator between two values.
func (c *code) binary(m mutant, n *ast.BinaryExpr, number int) edit {
	call := fmt.Sprintf("%s(%d, ", generic[n.Op][otherToken(m)], number)
	switch n.Op {
	case token.EQL, token.NEQ:
		return c.around(n.Pos(), n.End(), fmt.Sprintf("mutateFlip(%d, ", number), ")")
	case token.LAND, token.LOR:
		return c.around(n.Pos(), n.End(), call, ") })").instead(m, ", func() bool { return (")
	}
	return c.around(n.Pos(), n.End(), call, ")").instead(m, ",")
}

// instead puts another operator in the place of a change.
func (e edit) instead(m mutant, operator string) edit {
	e.at, e.until, e.operator = m.from, m.to, operator
	return e
}

func (c *code) around(from, to token.Pos, before, behind string) edit {
	return edit{from: c.offset(from), to: c.offset(to), before: before, behind: behind}
}

func (c *code) offset(at token.Pos) int { return c.files.Position(at).Offset }

func otherToken(m mutant) token.Token {
	for _, others := range swaps {
		for _, other := range others {
			if other.String() == m.with {
				return other
			}
		}
	}
	return token.ILLEGAL
}

// constant is the largest constant expression that a change is in, nil if none.
func (c *code) constant(m mutant) ast.Expr {
	known := c.packages[m.of].Info.Types
	for _, n := range m.around {
		e, ok := n.(ast.Expr)
		if ok && known[e].Value != nil && c.offset(e.Pos()) <= m.from && m.to <= c.offset(e.End()) {
			return e
		}
	}
	return nil
}

// picked is the edit of a change within a constant expression: the whole of it, before
// and after.
func (c *code) picked(m mutant, whole ast.Expr, number int) (edit, bool) {
	for _, n := range m.around {
		if d, ok := n.(*ast.GenDecl); ok && d.Tok == token.CONST {
			return edit{}, false
		}
	}
	p := c.packages[m.of]
	from, to := c.offset(whole.Pos()), c.offset(whole.End())
	source := c.sources[m.file]
	other := source[from:m.from] + m.with + source[m.to:to]
	kind := types.TypeString(types.Default(p.Info.Types[whole].Type), func(q *types.Package) string {
		if q.Path() == m.of {
			return ""
		}
		return q.Name()
	})
	other = strings.ReplaceAll(other, "\n", " ")
	return c.around(whole.Pos(), whole.End(), fmt.Sprintf("mutatePick[%s](%d, %s, ", kind, number, other), ")"), true
}
